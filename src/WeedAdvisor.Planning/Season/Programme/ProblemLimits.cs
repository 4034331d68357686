using System.Collections.Immutable;
using WeedAdvisor.Inference.Limits;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// The limits of a problem: rotation, distance, and what a year may see of an active over all products.
/// </summary>
internal static class ProblemLimits
{
    /// <summary>The limits.</summary>
    public static SeasonLimits Of(
        VisitArea area,
        SeasonRequest request,
        SeasonYear year,
        ImmutableArray<Treatment> treatments,
        UsualNumbers numbers,
        KnowledgeBase knowledge
    ) =>
        new()
        {
            Yearly =
            [
                .. treatments
                    .SelectMany(treatment => LimitsOf(treatment, knowledge))
                    .GroupBy(RowOf, StringComparer.Ordinal)
                    .Select(row => row.MinBy(limit => limit.Most)!)
                    .Select(limit => new Search.ActiveLimit(
                        RowOf(limit),
                        limit.Allowed,
                        Before(limit, area, year, knowledge)
                    )),
            ],
            MaxRunOfSite = request.RunOfSite,
            MaxShareOfSite = request.ShareOfSite,
            MinWeeksBetweenAny = Math.Max(1, numbers.Whole(UsualIds.BetweenAny)),
        };

    /// <summary>
    /// What one use of a treatment counts against each limit of its actives: the highest published rate, or one use. A
    /// use that nobody can count fills the year. An active without a limit counts nothing and still holds intervals.
    /// </summary>
    public static ImmutableArray<ActiveDose> DosesOf(Treatment treatment, KnowledgeBase knowledge) =>
        [
            .. OfActives(treatment, knowledge)
                .Select(limit => new ActiveDose(RowOf(limit), DoseOf(limit, treatment)))
                .Concat(treatment.Actives.Select(active => new ActiveDose(active.Name, 0)))
                .DistinctBy(dose => dose.Active, StringComparer.Ordinal),
        ];

    // All limits of an active count all products that hold it, also those that its own label frees.
    private static IEnumerable<YearlyLimit> OfActives(Treatment treatment, KnowledgeBase knowledge) =>
        knowledge
            .Treatments.Values.Where(other =>
                other.Actives.Any(active => treatment.Actives.Any(own => own.Name == active.Name))
            )
            .SelectMany(other => LimitsOf(other, knowledge))
            .Where(limit => treatment.Actives.Any(active => active.Name == limit.Active))
            .Where(limit => limit.Form is null || limit.Form == treatment.Form)
            .GroupBy(RowOf, StringComparer.Ordinal)
            .Select(row => row.MaxBy(limit => limit.Most)!);

    private static IEnumerable<YearlyLimit> LimitsOf(Treatment treatment, KnowledgeBase knowledge) =>
        LimitTable.Of(knowledge).YearlyOf(treatment).Where(limit => limit.Active is not null);

    private static decimal DoseOf(YearlyLimit limit, Treatment treatment) =>
        limit.Kind == LimitKind.Uses ? 1 : ActiveAmounts.Published(treatment, limit.Active!)?.Most ?? limit.Allowed;

    private static decimal Before(YearlyLimit limit, VisitArea area, SeasonYear year, KnowledgeBase knowledge) =>
        LimitCheck.MostBefore(limit, area.Past ?? [], year.From, knowledge) ?? limit.Allowed;

    // The search counts kilograms of a name: a limit on uses is one on a made-up active of which each use brings one.
    private static string RowOf(YearlyLimit limit) =>
        string.Join(
            ' ',
            new[]
            {
                limit.Active,
                limit.Form,
                limit.Kind == LimitKind.Uses ? "(uses)" : "",
                limit.IsStandIn ? "(one full use)" : "",
            }.Where(part => !string.IsNullOrEmpty(part))
        );
}
