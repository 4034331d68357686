using System.Collections.Immutable;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>The way that the visit found, and any way at other rounds.</summary>
public static class WaysOfYear
{
    private const int DaysInWeek = 7;

    /// <summary>The way that the visit found: today's rounds and mulch, and what went on in the year before.</summary>
    public static WayPlan Today(YearCase year)
    {
        var parts = ImmutableArray.CreateBuilder<WayPart>();
        PotMulch? lies = PotMulch.Of(year.Reading);
        if (lies is not null && Mulches.PracticeOf(lies.Kind, year.Knowledge) is { } laid)
        {
            parts.Add(new WayPart(laid, []) { DepthCm = lies.DepthCm });
            lies = null;
        }

        foreach (var uses in year.PastYear.GroupBy(past => past.Treatment!, StringComparer.Ordinal))
        {
            parts.Add(
                new WayPart(
                    year.Knowledge.Treatments[uses.Key],
                    [.. uses.Select(past => WeeksFrom(year.Day, past.Date!.Value)).Distinct().Order()]
                )
            );
        }

        return new WayPlan(WayPlan.Today, MeansOfToday(parts, year), year.Interval.Value, parts.ToImmutable())
        {
            StatedControl = year.TodayControl,
            LiesAlready = lies,
        };
    }

    /// <summary>The same way with rounds at another interval.</summary>
    public static WayPlan At(WayPlan plan, int intervalWeeks) =>
        plan with
        {
            Id = $"{plan.Id}-every-{intervalWeeks}",
            Means =
                string.Join(" and ", plan.Parts.Select(part => part.Action.Name))
                + (plan.Parts.Any(part => part.IsByBoom) ? " with a boom" : ""),
            IntervalWeeks = intervalWeeks,
            Rounds = YearRounds.Every(intervalWeeks),
        };

    // The week of the year from the visit in which the day comes round again.
    private static int WeeksFrom(DateOnly visit, DateOnly past)
    {
        int days = past.DayNumber - visit.DayNumber;
        return Math.Min(WeedTraits.WeeksInYear - 1, (((days % 365) + 365) % 365) / DaysInWeek);
    }

    private static string MeansOfToday(ImmutableArray<WayPart>.Builder parts, YearCase year)
    {
        string done =
            parts.Count > 0 ? string.Join(" and ", parts.Select(part => part.Action.Name))
            : year.TodayControl is > 0 ? "what stops weeds now, not noted in the visit"
            : "hands alone";
        return $"Today's way: {done}";
    }
}
