using System.Collections.Immutable;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Conclusions;

/// <summary>
/// What one judgement concludes from one match. Its identity is the judgement and the facts matched, so that two rules
/// that conclude the same stand beside each other and each can fall by itself.
/// </summary>
internal abstract class Conclusion : IEquatable<Conclusion>, IComparable<Conclusion>
{
    private protected Conclusion(Judgement judgement, ImmutableArray<Matched> match, MatchTruth truth)
    {
        Judgement = judgement;
        Match = match;
        IsCertain = truth.Truth == Truth.Yes;
        Needs = truth.Needs;
        Premise = truth.Premise;
        MostPremise = truth.MostPremise;
        Bindings = truth.Bindings;
        Action = ActionIn(match);
    }

    /// <summary>
    /// Judgement and matched facts as text; unique. Made when asked for: most conclusions are never shown.
    /// </summary>
    public string Key => $"{Judgement.Id}({string.Join(',', Match.OfType<Matched.One>().Select(one => one.Fact.Key))})";

    /// <summary>The judgement.</summary>
    public Judgement Judgement { get; }

    /// <summary>What each pattern matched, in the order of the patterns.</summary>
    public ImmutableArray<Matched> Match { get; }

    /// <summary>Whether every condition holds for sure.</summary>
    public bool IsCertain { get; }

    /// <summary>What has to be known before it is certain; empty when it is.</summary>
    public ImmutableArray<Need> Needs { get; }

    /// <summary>Certainty of the least certain finding it builds on; 1 when it builds on facts alone.</summary>
    public double Premise { get; }

    /// <summary>The same if all evidence that may hold turns out to hold; at least <see cref="Premise"/>.</summary>
    public double MostPremise { get; }

    /// <summary>What the variables of the judgement stand for.</summary>
    public Bindings Bindings { get; }

    /// <summary>The action matched, or null.</summary>
    public ActionFact? Action { get; }

    /// <summary>
    /// The rule's certainty times that of its premises (Shortliffe and Buchanan 1975: a conclusion is at most as
    /// certain as its weakest premise). Bars and cautions do not fade: their certainty is 1.
    /// </summary>
    public double Certainty => OwnCertainty is { } own ? own * Premise : 1;

    /// <summary>How certain it can become, whatever the unanswered questions turn out to be.</summary>
    public double MostCertainty => OwnCertainty is { } own ? own * MostPremise : 1;

    private double? OwnCertainty =>
        Judgement.Then switch
        {
            Consequence.MakesFinding finding => finding.Certainty,
            Consequence.Argument argument => argument.Certainty,
            _ => null,
        };

    /// <summary>A conclusion of the right kind for the judgement's consequence.</summary>
    public static Conclusion Of(Judgement judgement, ImmutableArray<Matched> match, MatchTruth truth) =>
        judgement.Then is Consequence.MakesFinding
            ? new FindingConclusion(judgement, match, truth)
            : new OtherConclusion(judgement, match, truth);

    /// <inheritdoc/>
    public bool Equals(Conclusion? other) => other is not null && CompareTo(other) == 0;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Conclusion);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode(StringComparison.Ordinal);

    /// <summary>Ordinal order of judgement, then of the facts matched.</summary>
    public int CompareTo(Conclusion? other) =>
        other is null ? 1 : Matched.InOrder(Judgement, Match, other.Judgement, other.Match);

    /// <inheritdoc/>
    public override string ToString() => Key;

    private static ActionFact? ActionIn(ImmutableArray<Matched> match)
    {
        foreach (Matched matched in match)
        {
            if (matched is Matched.One { Fact: ActionFact action })
                return action;
        }

        return null;
    }
}

/// <summary>A finding concluded by one judgement: evidence that other judgements can build on.</summary>
internal sealed class FindingConclusion(Judgement judgement, ImmutableArray<Matched> match, MatchTruth truth)
    : Conclusion(judgement, match, truth)
{
    /// <summary>The finding's id.</summary>
    public string Finding { get; } = ((Consequence.MakesFinding)judgement.Then).Id;
}

/// <summary>A support, doubt, bar or caution. It is never evidence.</summary>
internal sealed class OtherConclusion(Judgement judgement, ImmutableArray<Matched> match, MatchTruth truth)
    : Conclusion(judgement, match, truth);
