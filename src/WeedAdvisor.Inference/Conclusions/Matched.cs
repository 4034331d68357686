using System.Collections.Immutable;
using WeedAdvisor.Inference.Facts;

namespace WeedAdvisor.Inference.Conclusions;

/// <summary>What one pattern matched. A closed family: the nested types are all there are.</summary>
internal abstract record Matched
{
    private Matched()
    {
    }

    /// <summary>A fact.</summary>
    public sealed record One(Fact Fact) : Matched;

    /// <summary>The facts that pass, or may pass, a pattern of absence or existence.</summary>
    public sealed record Several(ImmutableArray<Fact> Facts) : Matched;

    /// <summary>The evidence for a finding, or for a finding that must be absent.</summary>
    public sealed record Evidence(ImmutableArray<FindingConclusion> Conclusions) : Matched;
}
