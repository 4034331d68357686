using System.Collections.Immutable;
using WeedAdvisor.Inference.Catalogue;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Inference.Conclusions;

/// <summary>
/// A judgement that holds, or may hold, for the case: what it matched, how true that is, and for which actions it
/// speaks. What was found out here is carried on to the last reason; nothing is decided a second time. Immutable.
/// </summary>
/// <param name="Judgement">The judgement.</param>
/// <param name="Match">What each pattern on the case matched.</param>
/// <param name="Truth">The truth of these patterns together; never <see cref="Knowledge.Readings.Truth.No"/>.</param>
/// <param name="Condition">What it asks of an action; null when it speaks of the area.</param>
/// <param name="Extent">The actions it speaks for; without meaning when it speaks of the area.</param>
internal sealed record CaseMatch(
    Judgement Judgement,
    ImmutableArray<Matched> Match,
    MatchTruth Truth,
    ActionCondition? Condition,
    Extent Extent
)
{
    /// <summary>The actions of which it holds for sure.</summary>
    public ActionSet? Sure => Condition is null || Truth.Truth != Knowledge.Readings.Truth.Yes ? null : Extent.Sure;

    /// <summary>The conclusion about the area.</summary>
    public Conclusion OnArea() => Conclusion.Of(Judgement, Match, Truth);

    /// <summary>The conclusion about one of the actions it speaks for.</summary>
    /// <param name="action">The action, as matched.</param>
    /// <param name="place">Its place in the catalogue.</param>
    public Conclusion On(Matched.One action, int place)
    {
        bool isSureOfAction = Extent.Sure.Contains(place);
        ImmutableArray<Matched> match = Match.Add(action);
        if (isSureOfAction && !Condition!.Binds)
            return Conclusion.Of(Judgement, match, Truth);
        FactTruth ofAction = PatternTruth.Of(Condition!.Pattern, action.Fact, Truth.Bindings);
        return Conclusion.Of(
            Judgement,
            match,
            isSureOfAction
                ? Truth with
                {
                    Bindings = ofAction.Bindings,
                }
                : Truth with
                {
                    Truth = Knowledge.Readings.Truth.NotKnown,
                    Needs = [.. Truth.Needs.Concat(ofAction.Needs).Distinct().Order()],
                    Bindings = ofAction.Bindings,
                }
        );
    }

    /// <summary>Ordinal order of judgement, then of the facts matched.</summary>
    public static int InOrder(CaseMatch one, CaseMatch other) =>
        Matched.InOrder(one.Judgement, one.Match, other.Judgement, other.Match);
}
