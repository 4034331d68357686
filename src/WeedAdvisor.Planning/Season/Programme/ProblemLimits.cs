using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>The limits of a problem: rotation, distance, and what a year may see of an active over all products.</summary>
internal static class ProblemLimits
{
    // The search counts kilograms; a limit on uses is a limit on a made-up active of which each use brings one.
    private const string Uses = " (uses)";

    /// <summary>The limits.</summary>
    public static SeasonLimits Of(
        VisitArea area,
        SeasonRequest request,
        SeasonYear year,
        ImmutableArray<Treatment> treatments,
        SeasonNumbers numbers,
        KnowledgeBase knowledge)
    {
        HashSet<string> held = [.. treatments.SelectMany(treatment => treatment.Actives).Select(active => active.Name)];
        return new SeasonLimits
        {
            Yearly = [.. knowledge.ActiveLimits.Values.Where(limit => held.Contains(limit.Active)).SelectMany(Both)],
            MaxRunOfSite = request.RunOfSite,
            MaxShareOfSite = request.ShareOfSite,
            MinWeeksBetweenAny = Math.Max(1, numbers.Whole(SeasonNumbers.BetweenAny)),
        };

        IEnumerable<Search.ActiveLimit> Both(Knowledge.Records.ActiveLimit limit)
        {
            if (limit.KgAiHaPerYear is { } kg)
                yield return new(limit.Active, kg + ActiveDoses.RoundingKgPerHa, SeasonHistory.KgBefore(area, year, limit.Active, knowledge));
            if (limit.UsesPerYear is { } uses)
                yield return new(limit.Active + Uses, uses, SeasonHistory.UsesBefore(area, year, limit.Active, knowledge));
        }
    }

    /// <summary>The doses of a treatment that count against limits on uses.</summary>
    public static IEnumerable<ActiveDose> CountedUses(Treatment treatment, KnowledgeBase knowledge) =>
        from active in treatment.Actives
        where knowledge.ActiveLimits.Values.Any(limit => limit.Active == active.Name && limit.UsesPerYear is not null)
        select new ActiveDose(active.Name + Uses, 1);
}
