using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>
/// How a weed keeps going: from seed, from what lies below, from spores and films, or in several of these ways. What is
/// done against it follows from that: rounds and days of ripe seed press only on what lives by seed. This is the one
/// place that reads it from a record.
/// </summary>
public static class WaysOfLife
{
    /// <summary>It comes again from its seed.</summary>
    public const string Seed = "seed";

    /// <summary>It comes again from roots, rhizomes or tubers.</summary>
    public const string Below = "below";

    /// <summary>It starts from spores, gemmae or pieces and grows on as a film or mat.</summary>
    public const string Spores = "spores";

    /// <summary>Where its words come from, as readers name them.</summary>
    public const string Notation = "words:seed|below|spores";

    private static readonly WordSet s_runners = WordSet.Of(["rhizomes", "creeping-roots", "stolons"]);
    private static readonly WordSet s_flyingSeed = WordSet.Of(["wind", "ballistic"]);

    /// <summary>
    /// The ways of a weed; empty of a broad kind whose weeds live in different ways:
    /// then it is not known.
    /// </summary>
    /// <param name="weed">The weed.</param>
    /// <param name="usual">What is usual, for the seeds that count beside runners.</param>
    public static WordSet Of(Weed weed, UsualNumbers usual)
    {
        if (weed.IsUnnamed)
            return weed.LivesBy;
        bool isOfSpores = weed.LifeCycle is "spore-borne" or "film" || weed.Kind is "bryophyte" or "alga" or "fern";
        return WordSet.Of([
            .. isOfSpores ? (string[])[Spores] : [],
            .. weed.Underground ? (string[])[Below] : [],
            .. !isOfSpores && SeedCounts(weed, usual[UsualIds.SeedsThatCount]) ? (string[])[Seed] : [],
        ]);
    }

    /// <summary>Whether it is known to live by seed.</summary>
    public static bool IsBySeed(Weed weed, UsualNumbers usual) => Of(weed, usual).Contains(Seed);

    // What runs below and bears fewer seeds than count, none of which flies, or may bear none at all, comes from its
    // runners. Of nutsedges the tubers count, of horsetails the rhizomes: they have no seed, or next to none comes up.
    private static bool SeedCounts(Weed weed, decimal seedsThatCount) =>
        weed.Kind != "horsetail"
        && !weed.SpreadsBy.Contains("tubers")
        && (
            !weed.Underground
            || weed.LifeCycle != "perennial"
            || !weed.SpreadsBy.Overlaps(s_runners)
            || (weed.SpreadsBy.Overlaps(s_flyingSeed) && weed.SeedsPerPlant?.Low is not 0m)
            || weed.SeedsPerPlant?.Low >= seedsThatCount
        );
}
