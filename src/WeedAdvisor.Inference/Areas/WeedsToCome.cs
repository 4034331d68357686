using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Areas;

/// <summary>
/// Which weeds are to come in an area: as told; else those common in nurseries of the zone that sit in such a place and
/// come up in this month or the next, a handful at most, and a few more that blow in where weeds seed round about. Who
/// tells less is never told of more: what hangs on an answer that is missing is left out.
/// </summary>
internal static class WeedsToCome
{
    private const int LookedAhead = 2;
    private const string None = "none",
        Wind = "wind",
        WeedsSeedRoundAbout = "weedy-seeding";

    /// <summary>The weeds to come.</summary>
    public static ComingWeeds Of(
        VisitArea area,
        IReadOnlyDictionary<string, Reading> site,
        EmergenceZone zone,
        DateOnly day,
        KnowledgeBase knowledge
    )
    {
        if (IsTold(area))
            return new ComingWeeds(
                [
                    .. (area.Weeds ?? [])
                        .Where(seen => seen.Stage == WeedSeen.ToCome)
                        .Select(seen => new ComingWeed(seen.Weed)),
                ],
                Origin.Answer,
                day
            );
        if (WordOf(site, QuestionIds.Place) is not { } place)
            return Open(site.GetValueOrDefault(QuestionIds.Place, Reading.Absent).Needs, []);
        if (zone.Possible.IsEmpty)
            return Open(zone.RegionNeeds, []);
        bool isSeededInto = WordOf(site, QuestionIds.Surroundings) == WeedsSeedRoundAbout;
        HashSet<string> seen = [.. (area.Weeds ?? []).Select(weed => weed.Weed)];
        ComingWeed[][] byZone =
        [
            .. zone.Possible.Select(possible =>
                Usual(knowledge, possible, place, zone.MonthOf(day), isSeededInto)
                    .Where(weed => !seen.Contains(weed.Weed))
                    .ToArray()
            ),
        ];
        ImmutableArray<ComingWeed> everywhere =
        [
            .. byZone[0].Where(weed => byZone.All(other => other.Any(one => one.Weed == weed.Weed))),
        ];
        return Open(byZone.All(weeds => weeds.Length == everywhere.Length) ? [] : zone.HeatedNeeds, everywhere);

        ComingWeeds Open(ImmutableArray<Need> needs, ImmutableArray<ComingWeed> weeds) =>
            new(weeds, Origin.Assumed, day) { Needs = needs };
    }

    /// <summary>
    /// The facts that weeds to come stand for besides the weeds told: only where the list of weeds is told, and only as
    /// weeds that are not up. What may blow in is named, but nothing rests on it: who does not tell what grows round
    /// about would be told to wait for it.
    /// </summary>
    public static IEnumerable<WeedSeen> Assumed(VisitArea area, ComingWeeds coming) =>
        area.Weeds is null || coming.From != Origin.Assumed
            ? []
            : coming.Weeds.Where(weed => !weed.BlowsIn).Select(weed => new WeedSeen(weed.Weed, WeedSeen.ToCome, null));

    // A weed whose stage was not noted may be one that is expected.
    private static bool IsTold(VisitArea area) =>
        (area.Weeds ?? []).Any(seen => seen.Stage is null or WeedSeen.ToCome)
        || (
            area.Answers.GetValueOrDefault(QuestionIds.ExpectedWeeds) is Answer.Words words
            && words.Value.Contains(None)
        );

    private static IEnumerable<ComingWeed> Usual(
        KnowledgeBase knowledge,
        string zone,
        string place,
        int month,
        bool isSeededInto
    )
    {
        Weed[] common =
        [
            .. knowledge
                .Weeds.Values.Where(weed =>
                    weed.Places.Contains(place)
                    && (weed.CommonestIn.Contains(zone) || weed.CommonIn.Contains(zone))
                    && (Emerges(weed, zone, month) || Emerges(weed, zone, month % 12 + 1))
                )
                .OrderByDescending(weed => weed.CommonestIn.Contains(zone))
                .ThenByDescending(weed => MonthsAhead(weed, zone, month))
                .ThenBy(weed => weed.Id, StringComparer.Ordinal),
        ];
        int most = knowledge.Usual.Whole(UsualIds.WeedsToCome);
        IEnumerable<Weed> blownIn = isSeededInto
            ? common
                .Skip(most)
                .Where(weed => weed.SpreadsBy.Contains(Wind))
                .Take(knowledge.Usual.Whole(UsualIds.WeedsBlownIn))
            : [];
        return common
            .Take(most)
            .Select(weed => new ComingWeed(weed.Id, Emerges(weed, zone, month)))
            .Concat(blownIn.Select(weed => new ComingWeed(weed.Id, Emerges(weed, zone, month), BlowsIn: true)));
    }

    // Of two as common, the one whose flush is ahead goes before the one whose flush ends.
    private static int MonthsAhead(Weed weed, string zone, int month) =>
        Enumerable.Range(1, LookedAhead).Count(ahead => Emerges(weed, zone, (month - 1 + ahead) % 12 + 1));

    private static bool Emerges(Weed weed, string zone, int month) =>
        weed.Emergence.TryGetValue(zone, out ImmutableArray<int> months) && months.Contains(month);

    private static string? WordOf(IReadOnlyDictionary<string, Reading> site, string question) =>
        site.GetValueOrDefault(question) is Reading.Words { Value: { Count: 1 } words } ? words.First() : null;
}
