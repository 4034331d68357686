using System.Collections.Immutable;

namespace WeedAdvisor.Inference.Advice;

/// <summary>Expected effect of an action on the weeds seen: cover-weighted mean of published reductions.</summary>
/// <param name="Reduction">Mean of the middles, 0 to 1; null when nothing is published for any weed that counts; of a
/// weed without a figure nothing is promised.</param>
/// <param name="Parts">The figures it comes from, one for each weed seen.</param>
public sealed record Effect(double? Reduction, ImmutableArray<EffectPart> Parts);

/// <summary>Effect on one weed.</summary>
/// <param name="Weed">The weed's id.</param>
/// <param name="Weight">Its share of the cover, 0 to 1.</param>
/// <param name="LowPercent">Low end of the published reduction, percent; null when missing.</param>
/// <param name="HighPercent">High end, percent; null when missing.</param>
/// <param name="Sources">Keys of the sources.</param>
public sealed record EffectPart(
    string Weed,
    double Weight,
    decimal? LowPercent,
    decimal? HighPercent,
    ImmutableArray<string> Sources
);
