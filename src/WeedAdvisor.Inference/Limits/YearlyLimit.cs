using System.Collections.Immutable;

namespace WeedAdvisor.Inference.Limits;

/// <summary>What a year may see: of an active over all products that hold it, or of one product.</summary>
/// <param name="Kind">Uses, or active ingredient in kilograms per hectare.</param>
/// <param name="Active">The active; null when it is the product's own limit, which counts all its actives
/// together.</param>
/// <param name="Most">The figure.</param>
/// <param name="Sources">Keys of its sources.</param>
public sealed record YearlyLimit(LimitKind Kind, string? Active, decimal Most, ImmutableArray<string> Sources)
{
    // Limits are printed in kilograms to two places, turned from pounds: 1.5 lb/acre stands as 1.68 and is 1.681.
    private const decimal MostRounding = 0.005m;

    /// <summary>Whether the source counts by calendar year; else a year is any twelve months.</summary>
    public bool ByCalendarYear { get; init; }

    /// <summary>The form that an amount holds for and counts; null for all.</summary>
    public string? Form { get; init; }

    /// <summary>Whether the figure is from memory and not confirmed.</summary>
    public bool IsFromMemory { get; init; }

    /// <summary>
    /// Whether nobody found a limit and one full use stands in for it: above that the label has to be asked.
    /// </summary>
    public bool IsStandIn { get; init; }

    /// <summary>
    /// The figure with half of its last printed place, which is what rounding may have taken off an amount.
    /// </summary>
    public decimal Allowed => Most + Rounding;

    /// <summary>What rounding may have taken off an amount; 0 for uses.</summary>
    public decimal Rounding => Kind == LimitKind.Uses || IsStandIn ? 0 : Math.Min(MostRounding, HalfOfLastPlace);

    private decimal HalfOfLastPlace => 0.5m * new decimal(1, 0, 0, false, Most.Scale);
}
