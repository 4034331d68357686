using System.Collections.Immutable;
using WeedAdvisor.Inference.Entry;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// The days on which hands may go into an area while a plan is carried out: no entry interval runs, of the visit's own
/// applications, of those under the same roof, or of what the plan puts on, on whichever of its days that is done.
/// </summary>
internal sealed class HandDays(SeasonCase season, ImmutableArray<PlannedUse> uses, KnowledgeBase knowledge)
{
    private const int LongestShut = 60;

    private readonly Dictionary<DateOnly, bool> _known = [];

    /// <summary>Whether they may on a day, before anything goes on that day.</summary>
    public bool AreOpen(DateOnly day) => _known.TryGetValue(day, out bool open) ? open : _known[day] = Reckoned(day);

    /// <summary>The first run of open days among some days; null when there is none.</summary>
    public DayRun? FirstRun(DateOnly from, DateOnly to) => Runs(from, to).Cast<DayRun?>().FirstOrDefault();

    /// <summary>The last run of open days among some days; null when there is none.</summary>
    public DayRun? LastRun(DateOnly from, DateOnly to) => Runs(from, to).Cast<DayRun?>().LastOrDefault();

    /// <summary>The first open day from a day on; null when it is shut for two months.</summary>
    public DateOnly? FirstFrom(DateOnly day) => FirstRun(day, day.AddDays(LongestShut))?.First;

    /// <summary>Whether something of the plan may go on on one of the days.</summary>
    public bool MeetUse(DayRun days) => uses.Any(use => use.Days.First <= days.Last && use.Days.Last >= days.First);

    // Of the days on which a use may have been made by then the latest keeps people out longest.
    private bool Reckoned(DateOnly day) =>
        Closures
            .Of(
                PlannedUse.After(
                    season.Through,
                    day,
                    uses.Where(use => use.Days.First < day)
                        .Select(use => use.DoneOn(use.Days.Last < day ? use.Days.Last : day.AddDays(-1)))
                ),
                knowledge
            )
            .All(closure => closure.Runs == Truth.No);

    private IEnumerable<DayRun> Runs(DateOnly from, DateOnly to) =>
        DayRun.In(
            Enumerable.Range(0, Math.Max(0, to.DayNumber - from.DayNumber + 1)).Select(from.AddDays).Where(AreOpen)
        );
}
