using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// What went on before the plan. It still acts, still holds intervals, still counts in the run of a site of action. All
/// of the year before counts against yearly limits for the whole plan, which is stricter than a calendar year or any
/// twelve months.
/// </summary>
internal sealed class SeasonHistory(VisitArea area, SeasonYear year, CandidateList list, KnowledgeBase knowledge)
{
    private const int DaysInYear = 364;

    private ImmutableArray<(DateOnly Day, Treatment Treatment)> Within { get; } =
    [
        .. (area.Past ?? [])
            .Where(past => past.Date is { } day && day <= year.From && day >= year.From.AddDays(-DaysInYear))
            .Where(past => knowledge.RecordOf(past) is not null)
            .Select(past => (past.Date!.Value, knowledge.RecordOf(past)!))
            .OrderBy(past => past.Value)
            .ThenBy(past => past.Item2.Id, StringComparer.Ordinal),
    ];

    /// <summary>
    /// The uses, oldest first; those that stop no seed are left out, for they are not of the programme.
    /// </summary>
    public ImmutableArray<PastUse> Uses() =>
        [
            .. Within
                .Where(past => past.Treatment.Role == "preemergence")
                .Select(past => new PastUse(Math.Min(-1, year.WeekOf(past.Day)), list.Past(past.Treatment))),
        ];

    /// <summary>A candidate with the uses that the year before has had of it.</summary>
    public SeasonCandidate Counted(Treatment treatment, SeasonCandidate candidate) =>
        candidate with
        {
            UsesBefore = Within.Count(past => past.Treatment.Id == treatment.Id),
        };
}
