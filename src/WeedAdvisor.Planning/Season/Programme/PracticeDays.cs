using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>Finds the first days on which the rules allow a practice, with what the plan has put on by then.</summary>
internal sealed class PracticeDays(
    SeasonCase season,
    ImmutableArray<PlannedUse> uses,
    HandDays hands,
    Func<AreaCase, AreaAdvice> ask
)
{
    // As long as an application's week and the longest entry interval may put it off.
    private const int LongestOff = 28;
    private const int EnoughDays = 3;

    private ImmutableArray<(DateOnly From, DateOnly To, AreaAdvice Advice)> _stretches;

    /// <summary>
    /// The first run of allowed days that leaves time for the work, or the first of all where it cannot wait; no longer
    /// than the days it is wanted in. Null when no day of the four weeks is allowed.
    /// </summary>
    /// <param name="practice">The practice.</param>
    /// <param name="wanted">The days it is wanted in.</param>
    public DayRun? Of(Practice practice, DayRun wanted)
    {
        DayRun[] runs = [.. DayRun.In(Allowed(practice, wanted.First))];
        if (runs.Length == 0)
            return null;
        DayRun run =
            practice.When == "now"
                ? runs[0]
                : runs.Append(runs[0]).First(one => one.Length >= EnoughDays || one == runs[^1]);
        DateOnly last = run.First <= wanted.Last ? wanted.Last : run.First.AddDays(wanted.Length - 1);
        return run with { Last = run.Last < last ? run.Last : last };
    }

    private IEnumerable<DateOnly> Allowed(Practice practice, DateOnly from)
    {
        if (_stretches.IsDefault)
            _stretches = [.. Asked()];
        return _stretches
            .Where(stretch => stretch.Advice.IsClear(practice.Id))
            .SelectMany(stretch =>
                Enumerable.Range(0, stretch.To.DayNumber - stretch.From.DayNumber + 1).Select(stretch.From.AddDays)
            )
            .Where(day => day >= from && (practice.Entry != EntryNeed.Worker || hands.AreOpen(day)));
    }

    private IEnumerable<(DateOnly From, DateOnly To, AreaAdvice Advice)> Asked()
    {
        DateOnly first = season.Year.From;
        foreach ((DateOnly from, DateOnly to) in season.Rules.Stretches.Of(On, first, first.AddDays(LongestOff)))
            yield return (from, to, ask(On(from)));
    }

    private AreaCase On(DateOnly day) => PlannedUse.After(season.Through, day, Done(day));

    private IEnumerable<PastApplication> Done(DateOnly day) =>
        uses.Where(use => use.Days.First < day)
            .Select(use => use.DoneOn(use.Days.Last < day ? use.Days.Last : day.AddDays(-1)));
}
