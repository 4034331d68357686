using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// What went on before the plan. It still acts, still holds intervals, still counts in the run of a site of action. All of
/// the year before counts against yearly limits for the whole plan, which is stricter than a calendar year or any twelve months.
/// </summary>
internal sealed class SeasonHistory(VisitArea area, SeasonYear year, CandidateList list, KnowledgeBase knowledge)
{
    private const int DaysInYear = 364;

    private ImmutableArray<(DateOnly Day, Treatment Treatment)> Within { get; } =
    [
        .. (area.Past ?? [])
            .Where(past => past.Date is { } day && day < year.From && day >= year.From.AddDays(-DaysInYear))
            .Where(past => knowledge.RecordOf(past) is not null)
            .Select(past => (past.Date!.Value, knowledge.RecordOf(past)!))
            .OrderBy(past => past.Value)
            .ThenBy(past => past.Item2.Id, StringComparer.Ordinal),
    ];

    /// <summary>The uses, oldest first; those that stop no seed are left out, for they are not of the programme.</summary>
    public ImmutableArray<PastUse> Uses() =>
    [
        .. Within
            .Where(past => past.Treatment.Role == "preemergence")
            .Select(past => new PastUse(Math.Min(-1, year.WeekOf(past.Day)), list.Past(past.Treatment))),
    ];

    /// <summary>A candidate with the uses that the year before has had of it.</summary>
    public SeasonCandidate Counted(Treatment treatment, SeasonCandidate candidate) =>
        candidate with { UsesBefore = Within.Count(past => past.Treatment.Id == treatment.Id) };

    /// <summary>How much of an active the year before has had, kilograms per hectare at the highest published rates.</summary>
    public static decimal KgBefore(VisitArea area, SeasonYear year, string active, KnowledgeBase knowledge) =>
        UsesOf(area, year, active, knowledge).Sum(use => ActiveDoses.KgPerHa(use.Treatment, use.Active) ?? 0);

    /// <summary>How many uses of products with an active the year before has had.</summary>
    public static int UsesBefore(VisitArea area, SeasonYear year, string active, KnowledgeBase knowledge) =>
        UsesOf(area, year, active, knowledge).Count();

    private static IEnumerable<(Treatment Treatment, Active Active)> UsesOf(
        VisitArea area, SeasonYear year, string active, KnowledgeBase knowledge) =>
        from past in area.Past ?? []
        where past.Date is { } day && day < year.From && day >= year.From.AddDays(-DaysInYear)
        let treatment = knowledge.RecordOf(past)
        where treatment is not null
        from one in treatment.Actives
        where one.Name == active
        select (treatment, one);
}
