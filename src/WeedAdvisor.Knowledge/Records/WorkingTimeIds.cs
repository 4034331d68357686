using System.Collections.Immutable;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>The ids of <c>working-times.yaml</c>, each with its unit in it, and the limits outside of which a number is
/// a slip.</summary>
public static class WorkingTimeIds
{
    /// <summary>Setting a spreader, sprayer or spoon to its rate.</summary>
    public const string Calibration = "calibration-minutes-a-use";

    /// <summary>Measuring out and filling the first tank.</summary>
    public const string Mixing = "mixing-minutes-first-tank";

    /// <summary>Filling a tank again.</summary>
    public const string Refill = "refill-minutes-a-tank";

    /// <summary>Cleaning what was used.</summary>
    public const string CleanUp = "clean-up-minutes-a-use";

    /// <summary>Signs at the block, and what the law wants written down.</summary>
    public const string Posting = "posting-and-records-minutes-a-use";

    /// <summary>Ground that a hand spreader covers.</summary>
    public const string Spreader = "hand-spreader-acres-an-hour";

    /// <summary>Ground that a backpack sprayer covers.</summary>
    public const string Backpack = "backpack-sprayer-acres-an-hour";

    /// <summary>Ground that a boom sprayer covers.</summary>
    public const string Boom = "boom-sprayer-acres-an-hour";

    /// <summary>Water that a spray takes.</summary>
    public const string SprayVolume = "spray-litres-a-hectare";

    /// <summary>What a backpack holds.</summary>
    public const string BackpackTank = "backpack-sprayer-litres-a-tank";

    /// <summary>What the tank of a boom sprayer holds.</summary>
    public const string BoomTank = "boom-sprayer-litres-a-tank";

    /// <summary>One dose from a spoon or shaker.</summary>
    public const string Spoon = "spoon-seconds-a-pot";

    /// <summary>Laying loose mulch by hand.</summary>
    public const string Mulching = "mulching-seconds-a-pot";

    /// <summary>Fitting a disc.</summary>
    public const string Discs = "disc-seconds-a-pot";

    /// <summary>Weeding a pot that is half covered.</summary>
    public const string Weeding = "weeding-seconds-a-half-covered-pot";

    private static readonly Bounds s_minutes = new(0, 600);
    private static readonly Bounds s_seconds = new(0.1m, 600);
    private static readonly Bounds s_acres = new(0.01m, 100);
    private static readonly Bounds s_litres = new(1, 100_000);

    /// <summary>Those that say how long one pot takes: the work of a practice may be one of them.</summary>
    public static ImmutableArray<string> PerPot { get; } = [Discs, Mulching, Spoon, Weeding];

    /// <summary>Id and limits of each; a file of working times has every one once.</summary>
    public static ImmutableSortedDictionary<string, Bounds> All { get; } =
        new Dictionary<string, Bounds>
        {
            [Calibration] = s_minutes,
            [Mixing] = s_minutes,
            [Refill] = s_minutes,
            [CleanUp] = s_minutes,
            [Posting] = s_minutes,
            [Spreader] = s_acres,
            [Backpack] = s_acres,
            [Boom] = s_acres,
            [SprayVolume] = s_litres,
            [BackpackTank] = s_litres,
            [BoomTank] = s_litres,
            [Spoon] = s_seconds,
            [Mulching] = s_seconds,
            [Discs] = s_seconds,
            [Weeding] = s_seconds,
        }.ToImmutableSortedDictionary(StringComparer.Ordinal);
}
