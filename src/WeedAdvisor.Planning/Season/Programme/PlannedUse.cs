using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>A run of days.</summary>
/// <param name="First">The first day.</param>
/// <param name="Last">The last day; the same where it is one day.</param>
public readonly record struct DayRun(DateOnly First, DateOnly Last)
{
    /// <summary>How many days it has.</summary>
    public int Length => Last.DayNumber - First.DayNumber + 1;

    /// <summary>The runs that some days, in order, make up.</summary>
    internal static IEnumerable<DayRun> In(IEnumerable<DateOnly> days)
    {
        DayRun? run = null;
        foreach (DateOnly day in days)
        {
            if (run is { } open && open.Last.AddDays(1) == day)
            {
                run = open with { Last = day };
                continue;
            }

            if (run is { } done)
                yield return done;
            run = new DayRun(day, day);
        }

        if (run is { } last)
            yield return last;
    }
}

/// <summary>A use of the plan with the days on which the rules allow it: any of them, as the weather suits.</summary>
/// <param name="Treatment">The treatment's id.</param>
/// <param name="Days">The days, all in one week of the plan.</param>
/// <param name="IsLongestOfSeveral">Whether the week has other allowed days before or after a gap.</param>
public sealed record PlannedUse(string Treatment, DayRun Days, bool IsLongestOfSeveral)
{
    /// <summary>The week of the plan, from 0.</summary>
    public int Week { get; init; }

    /// <summary>What it costs, US dollars for 1000 pots.</summary>
    public decimal Usd { get; init; }

    /// <summary>
    /// The use as something that has been done on one of its days: nothing came through, and it was watered in.
    /// </summary>
    public PastApplication DoneOn(DateOnly day) =>
        new(Treatment, day, "clean", WordSet.Empty) { PartOnly = false, WateredIn = true };

    /// <summary>An area on a day, with uses of the plan among what was put on before.</summary>
    internal static AreaCase After(AreaThroughYear through, DateOnly day, IEnumerable<PastApplication> done)
    {
        AreaCase on = through.On(day);
        return on with { Area = on.Area with { Past = [.. on.Area.Past ?? [], .. done] } };
    }
}
