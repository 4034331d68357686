using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>
/// The weeds of an area's year, one list for all sums: those told, those that came through earlier treatments and those
/// that fly in; where none is told, those to come.
/// </summary>
/// <param name="Counted">The weeds counted, at most <see cref="Most"/>: those told first, then those that fly
/// in.</param>
/// <param name="LeftOut">Why other weeds are not counted, as sentences.</param>
public sealed record YearWeeds(ImmutableArray<YearWeed> Counted, ImmutableArray<string> LeftOut)
{
    /// <summary>The most weeds that are followed.</summary>
    public const int Most = 12;

    private const string Film = "alga",
        Ripe = "seeding",
        Wind = "wind";

    /// <summary>The weeds of an area.</summary>
    /// <param name="area">The area as read.</param>
    /// <param name="site">The place.</param>
    /// <param name="numbers">The parameters of the weeding model.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="only">Ids of the weeds to count instead; empty for those of the area.</param>
    /// <param name="firstSeed">Weeks to the first seed of each weed.</param>
    /// <param name="frost">Whether frost comes in each week; empty where none does.</param>
    internal static YearWeeds Of(
        AreaReading area,
        WeedSite site,
        WeedingNumbers numbers,
        KnowledgeBase knowledge,
        ImmutableArray<string> only,
        Func<Weed, decimal?> firstSeed,
        ImmutableArray<bool> frost
    )
    {
        var counted = new List<YearWeed>();
        var leftOut = ImmutableArray.CreateBuilder<string>();
        foreach ((string id, WeedOrigin origin) in Named(area, knowledge, only))
        {
            Weed weed = knowledge.Weeds[id];
            if (weed.Kind == Film)
            {
                if (origin != WeedOrigin.BlownIn)
                    leftOut.Add($"{weed.Name} is a film that cannot be pulled.");
                continue;
            }

            Outcome<WeedTraits, string> traits = WeedTraits.Of(weed, site, numbers, firstSeed(weed));
            if (traits.IsGood)
                counted.Add(Counting(area, weed, origin, traits.Value, numbers, knowledge.Usual, frost));
            else if (origin != WeedOrigin.BlownIn)
                leftOut.AddRange(traits.Refusals);
        }

        return new YearWeeds(
            [
                .. counted
                    .OrderBy(weed => weed.Origin == WeedOrigin.BlownIn)
                    .ThenByDescending(weed => weed.Origin == WeedOrigin.BlownIn ? Offspring(weed.Traits) : 0)
                    .Take(Most),
            ],
            leftOut.ToImmutable()
        );
    }

    // Of what flies in, those count that would seed most into the pots in a week.
    private static double Offspring(WeedTraits traits) =>
        traits.SeedsPerWeek * traits.SeedlingsPerSeed / traits.FirstSeedWeek;

    private static YearWeed Counting(
        AreaReading area,
        Weed weed,
        WeedOrigin origin,
        WeedTraits traits,
        WeedingNumbers numbers,
        UsualNumbers usual,
        ImmutableArray<bool> frost
    ) =>
        new(
            weed,
            origin,
            traits with
            {
                SeedlingsPerYear = traits.SeedlingsPerYear * (double)usual[ShareOf(origin)] / 100,
            },
            StandingNow.Of([.. (area.Area.Weeds ?? []).Where(seen => seen.Weed == weed.Id)], traits, numbers)
        )
        {
            Frost = FrostWeeks.Killing(weed, frost),
        };

    private static string ShareOf(WeedOrigin origin) =>
        origin switch
        {
            WeedOrigin.Seeding => UsualIds.Seeding,
            WeedOrigin.BlownIn => UsualIds.BlownIn,
            _ => UsualIds.Seen,
        };

    private static IEnumerable<(string Id, WeedOrigin Origin)> Named(
        AreaReading reading,
        KnowledgeBase knowledge,
        ImmutableArray<string> only
    )
    {
        (string Id, WeedOrigin Origin)[] told = [.. Told(reading.Area)];
        // Who told nothing of weeds is not told of any.
        IEnumerable<(string Id, WeedOrigin Origin)> named =
            !only.IsEmpty ? only.Select(id => told.Append((id, WeedOrigin.Seen)).First(one => one.Item1 == id))
            : reading.Area.Weeds is null ? []
            : reading.Area.Weeds is { IsEmpty: false } ? [.. told, .. Flying(reading, knowledge)]
            :
            [
                .. told,
                .. reading.Coming.Weeds.Select(weed =>
                    (weed.Weed, weed.BlowsIn ? WeedOrigin.BlownIn : WeedOrigin.ToCome)
                ),
                .. Flying(reading, knowledge),
            ];
        return named.DistinctBy(one => one.Id).Where(one => knowledge.Weeds.ContainsKey(one.Id));
    }

    // What sheds seed is told first, so that it counts as that in whatever stages it stands besides.
    private static IEnumerable<(string Id, WeedOrigin Origin)> Told(VisitArea area) =>
        [
            .. (area.Weeds ?? [])
                .GroupBy(seen => seen.Weed, StringComparer.Ordinal)
                .Select(weed =>
                    (weed.Key, weed.Any(seen => seen.Stage == Ripe) ? WeedOrigin.Seeding : WeedOrigin.Seen)
                ),
            .. (area.Past ?? []).SelectMany(past => past.Escaped).Select(id => (id, WeedOrigin.CameThrough)),
        ];

    private static IEnumerable<(string Id, WeedOrigin Origin)> Flying(AreaReading area, KnowledgeBase knowledge) =>
        area is { IsSeededInto: true, Place: { } place }
            ? knowledge
                .Weeds.Values.Where(weed => weed.SpreadsBy.Contains(Wind) && weed.Places.Contains(place))
                .Select(weed => (weed.Id, WeedOrigin.BlownIn))
            : [];
}
