using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;

namespace WeedAdvisor.Planning.Nursery;

/// <summary>
/// What a clean floor, strip, pile or bank saves in the pots. Of a weed's seedlings a share comes from all places
/// without pots where the same weed stands, each of them an equal part of it; how large the share is, is assumed. What
/// a clean place is worth is the difference of two plans: the area's, and the cheapest of its ways that keeps its share
/// when that part no longer comes.
/// </summary>
internal static class NurserySources
{
    private const string Film = "alga";

    /// <summary>The places, by what cleaning them is worth, the most first; those worth nothing are left out.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="areas">The areas with their shares and all their ways.</param>
    public static ImmutableArray<SourceWorth> Of(
        Visit visit,
        KnowledgeBase knowledge,
        ImmutableArray<(SharedArea Area, ImmutableArray<AreaWay> Ways)> areas
    )
    {
        (VisitArea Place, ImmutableArray<string> Weeds)[] places =
        [
            .. visit
                .Areas.Where(area => !AreaReading.Of(area, visit.Date, knowledge).HasPots)
                .Select(area => (area, WeedsOf(area, knowledge)))
                .Where(place => !place.Item2.IsEmpty),
        ];
        double all = (double)knowledge.Usual[UsualIds.FromNearBy] / 100;
        Dictionary<string, int> placesOf = places
            .SelectMany(place => place.Weeds)
            .GroupBy(weed => weed, StringComparer.Ordinal)
            .ToDictionary(weed => weed.Key, weed => weed.Count(), StringComparer.Ordinal);
        return
        [
            .. places
                .Select(place => new SourceWorth(
                    place.Place,
                    [
                        .. areas
                            .Select(area => (area.Area.Area, Usd: Saved(area.Area, area.Ways, Kept(place.Weeds))))
                            .Where(worth => worth.Usd > 0)
                            .OrderByDescending(worth => worth.Usd),
                    ]
                )
                {
                    Weeds =
                    [
                        .. place
                            .Weeds.Where(weed => areas.Any(area => Counts(area.Area, weed)))
                            .Select(weed => knowledge.Weeds[weed].Name),
                    ],
                })
                .Where(source => source.Usd > 0)
                .OrderByDescending(source => source.Usd),
        ];

        Func<string, double> Kept(ImmutableArray<string> weeds) =>
            weed => weeds.Contains(weed) ? all / placesOf[weed] : 0;
    }

    private static ImmutableArray<string> WeedsOf(VisitArea area, KnowledgeBase knowledge) =>
        [
            .. (area.Weeds ?? [])
                .Where(seen => seen.IsUp != false)
                .Select(seen => seen.Weed)
                .Distinct()
                .Where(id => knowledge.Weeds.GetValueOrDefault(id) is { IsUnnamed: false, Kind: not Film }),
        ];

    private static bool Counts(SharedArea area, string weed) =>
        area.Best.Case.Year.Weeds.Counted.Any(one => one.Weed.Id == weed);

    private static decimal Saved(SharedArea area, ImmutableArray<AreaWay> ways, Func<string, double> kept)
    {
        YearCase year = area.Best.Case.Year;
        if (year.Weeds.Counted.All(weed => kept(weed.Weed.Id) == 0))
            return 0;
        YearCase clean = NearBy.Without(year, kept);
        decimal least = ways.Select(way => way.Way.Plan)
            .Prepend(area.Plan.Way.Plan)
            .Select(plan => WayCosting.Of(clean, plan).Value!)
            .Where(way =>
                PlanLimits.BusiestWeekHours(clean, way) <= area.Share.HoursPerWeek
                && PlanLimits.SpentUsd(clean, way) <= area.Share.SpentUsd
            )
            .Select(way => way.Usd * year.Pots / 1000)
            .DefaultIfEmpty(area.Share.Usd)
            .Min();
        return Math.Max(0, area.Share.Usd - least);
    }
}
