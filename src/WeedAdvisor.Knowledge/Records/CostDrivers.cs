using System.Collections.Immutable;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>
/// What an action costs for 1000 pots of the usual width and spacing, or for 100 m² of ground without pots, as far as
/// its record says it.
/// </summary>
/// <param name="MaterialsUsd">Materials, US dollars; null where depth or dose says how much is needed.</param>
/// <param name="LabourHours">Labour, hours; null where working times say how long it takes.</param>
/// <param name="Sources">Keys of the sources; <c>invented</c> for the shipped figures that have none.</param>
public sealed record CostDrivers(Span? MaterialsUsd, Span? LabourHours, ImmutableArray<string> Sources)
{
    /// <summary>Id of the price that the materials follow; null when they follow none.</summary>
    public string? Price { get; init; }

    /// <summary>How deep it is laid on the mix, centimetres; null where depth says nothing of the amount.</summary>
    public Span? DepthCm { get; init; }

    /// <summary>Id of the working time of one pot, in place of labour; null where there is none.</summary>
    public string? Work { get; init; }

    /// <summary>What it grows with.</summary>
    public CostGrowth GrowsWith { get; init; }
}

/// <summary>What the cost of an action grows with.</summary>
public enum CostGrowth
{
    /// <summary>Materials and work with the number of pots.</summary>
    Pots = 0,

    /// <summary>Materials with the number of pots, work as weeding does: larger pots take longer.</summary>
    Weeding,

    /// <summary>Materials with the surface of the mix, work as mulching does.</summary>
    Surface,

    /// <summary>Materials and work with the ground that the pots stand on.</summary>
    Ground,

    /// <summary>A strip, a leak or a store: the same however many pots stand there.</summary>
    Nothing,
}

/// <summary>The words of a knowledge file for <see cref="CostGrowth"/>.</summary>
public static class CostGrowthWords
{
    /// <summary>The words that a file may have.</summary>
    public const string Notation = "words:pots|weeding|surface|ground|nothing";

    /// <summary>What a word of the file means; pots where there is none.</summary>
    /// <param name="word">The word; null for none.</param>
    public static CostGrowth Of(string? word) =>
        word switch
        {
            "weeding" => CostGrowth.Weeding,
            "surface" => CostGrowth.Surface,
            "ground" => CostGrowth.Ground,
            "nothing" => CostGrowth.Nothing,
            _ => CostGrowth.Pots,
        };
}
