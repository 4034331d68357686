using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Planning.Blocks;

namespace WeedAdvisor.Planning.Costs;

/// <summary>
/// What one use of an action is reckoned for: all pots of an area, or 100 m² of ground where no pots stand.
/// </summary>
/// <param name="Block">The pots; null where none stand.</param>
/// <param name="Ground">What is worked on, word of list <c>ground</c>; null when it is not told.</param>
public sealed record CostSite(PotBlock? Block, string? Ground)
{
    private const decimal GroundWithoutPotsM2 = 100;
    private const decimal Thousand = 1000;

    /// <summary>The ground of the beds, square metres.</summary>
    public decimal GroundM2 => Block?.GroundM2 ?? GroundWithoutPotsM2;

    /// <summary>Thousands of pots, or hundreds of square metres where none stand.</summary>
    public decimal Units => Block is { } block ? block.Pots.Value / Thousand : 1;

    /// <summary>Whether it is told how many pots there are; no where none stand.</summary>
    public bool IsNumberTold => Block is { Pots.From: not Origin.Assumed };

    /// <summary>Whether number, width and spacing of the pots are all told.</summary>
    public bool IsTold { get; init; }

    /// <summary>The site of an area: its pots as told, else as usual.</summary>
    /// <param name="area">The area as read.</param>
    /// <param name="usual">What is taken where nobody says it.</param>
    /// <param name="pots">Pots set for this reckoning; null for none.</param>
    public static CostSite Of(AreaReading area, UsualNumbers usual, int? pots = null) =>
        new(area.IsForPots == false ? null : PotBlock.Of(area, usual, pots), area.Ground) { IsTold = area.IsSizeTold };
}
