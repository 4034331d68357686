using System.Collections.Immutable;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>
/// The parameters of the hand-weeding model: their ids, and the limits outside of which a number is a slip.
/// </summary>
public static class WeedingParameterLimits
{
    private static readonly Bounds s_percent = new(0, 100);
    private static readonly Bounds s_factorPercent = new(0, 1000);
    private static readonly Bounds s_seedlings = new(0, 1_000_000);
    private static readonly Bounds s_seconds = new(0, 600);

    /// <summary>Id and limits of every parameter; a file of parameters has each of them once.</summary>
    public static ImmutableSortedDictionary<string, Bounds> All { get; } =
        new Dictionary<string, Bounds>
        {
            ["seedlings-per-1000-pots-per-year-ballistic"] = s_seedlings,
            ["seedlings-per-1000-pots-per-year-spores"] = s_seedlings,
            ["seedlings-per-1000-pots-per-year-wind"] = s_seedlings,
            ["seedlings-per-1000-pots-per-year-water-splash"] = s_seedlings,
            ["seedlings-per-1000-pots-per-year-carried"] = s_seedlings,
            ["land-in-pots-percent-ballistic"] = s_percent,
            ["land-in-pots-percent-spores"] = s_percent,
            ["land-in-pots-percent-wind"] = s_percent,
            ["land-in-pots-percent-water-splash"] = s_percent,
            ["land-in-pots-percent-carried"] = s_percent,
            ["come-up-percent-seeds"] = s_percent,
            ["come-up-percent-spores"] = s_percent,
            ["germinate-percent-per-week"] = s_percent,
            ["seed-left-percent-at-end-of-life"] = new(0.1m, 99),
            ["seeding-weeks"] = new(1, 52),
            ["seeds-multiple-of-lowest"] = new(0, 100),
            ["diameter-cm-at-first-seed"] = new(0.1m, 100),
            ["growth-exponent"] = new(0.5m, 5),
            ["largest-diameter-cm"] = new(1, 200),
            ["smallest-pulled-cm"] = new(0, 50),
            ["seedling-deaths-percent-per-week"] = s_percent,
            ["grown-deaths-percent-per-week"] = s_percent,
            ["life-weeks-of-annual"] = new(4, 52),
            ["resprout-percent"] = s_percent,
            ["pot-surface-cm2"] = new(1, 100_000),
            ["most-weeds-per-pot"] = new(1, 1000),
            ["wet-surface-percent"] = s_factorPercent,
            ["dry-surface-percent"] = s_factorPercent,
            ["surroundings-percent-seeding"] = s_factorPercent,
            ["surroundings-percent-weed-free"] = s_factorPercent,
            ["mulch-control-percent-light-needing"] = s_percent,
            ["mulch-control-percent-partly"] = s_percent,
            ["mulch-control-percent-dark-sprouting"] = s_percent,
            ["thin-mulch-percent-of-control"] = s_percent,
            ["working-depth-cm-rice-hulls"] = new(0, 30),
            ["working-depth-cm-other-mulch"] = new(0, 30),
            ["diameter-cm-seen-seedling"] = new(0.1m, 100),
            ["diameter-cm-seen-young"] = new(0.1m, 100),
            ["diameter-cm-seen-grown"] = new(0.1m, 100),
            ["walking-minutes-per-1000-pots-per-round"] = new(0, 10_000),
            ["walking-percent-by-ground"] = s_percent,
            ["next-year-rounds-weeks"] = new(1, 52),
            ["next-year-seedlings-per-pot-at-most"] = new(0, 1000),
            ["pull-seconds-under-2-5-cm"] = s_seconds,
            ["pull-seconds-from-2-5-to-5-cm"] = s_seconds,
            ["pull-seconds-from-5-to-10-cm"] = s_seconds,
            ["pull-seconds-from-10-to-20-cm"] = s_seconds,
            ["pull-seconds-over-20-cm"] = s_seconds,
            ["missed-percent"] = s_percent,
            ["materials-usd-per-1000-pots-per-round"] = new(0, 10_000),
        }.ToImmutableSortedDictionary(StringComparer.Ordinal);
}
