using System.Collections.Immutable;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Inference.Conclusions;

/// <summary>What one pattern matched. A closed family: the nested types are all there are.</summary>
internal abstract record Matched
{
    private Matched() { }

    /// <summary>Ordinal order of judgement, then of the single facts matched.</summary>
    public static int InOrder(
        Judgement judgement,
        ImmutableArray<Matched> match,
        Judgement other,
        ImmutableArray<Matched> matchOfOther
    )
    {
        int order = string.CompareOrdinal(judgement.Id, other.Id);
        for (int i = 0; order == 0 && i < match.Length; i++)
        {
            if (match[i] is One left && matchOfOther[i] is One right)
                order = string.CompareOrdinal(left.Fact.Key, right.Fact.Key);
        }

        return order;
    }

    /// <summary>A fact.</summary>
    public sealed record One(Fact Fact) : Matched;

    /// <summary>The facts that pass, or may pass, a pattern of absence or existence.</summary>
    public sealed record Several(ImmutableArray<Fact> Facts) : Matched;

    /// <summary>The evidence for a finding, or for a finding that must be absent.</summary>
    public sealed record Evidence(ImmutableArray<FindingConclusion> Conclusions) : Matched;
}
