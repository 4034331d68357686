using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Engine;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Lines;

/// <summary>The bars that an advice names are those that bar: all of them, and nothing else does.</summary>
public sealed class NamedBarsLawTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    [Fact]
    public void A_barred_verdict_stands_while_any_bar_it_names_stands_and_ends_without_all_of_them() =>
        Gen.Select(new RandomVisits(s_knowledge).Case, Gen.Int[0, 100_000])
            .Sample(
                (looked, which) =>
                {
                    ImmutableArray<BarredAction> barred = ShippedRules.Advisor.Open(looked).Advice.Barred;
                    if (barred.IsEmpty)
                        return;
                    BarredAction action = barred[which % barred.Length];
                    string[] named = [.. action.Because.Select(reason => reason.Judgement).Distinct()];
                    Assert.False(IsBarredWithout(looked, action.Action, named));
                    foreach (string left in named)
                        Assert.True(IsBarredWithout(looked, action.Action, [.. named.Where(rule => rule != left)]));
                },
                iter: Sizes.Of(8, 200)
            );

    // By the tree alone, with the one action as the whole catalogue.
    private static bool IsBarredWithout(AreaCase looked, string action, string[] rules) =>
        TreeInference
            .Conclude(
                s_knowledge.Judgements.Where(rule =>
                    !rules.Contains(rule.Id) && rule.Then is (Consequence.Bar or Consequence.MakesFinding)
                ),
                [
                    .. AreaFacts.Of(s_knowledge, looked),
                    .. CatalogueFacts.Of(s_knowledge).Where(fact => fact.Id == action),
                ]
            )
            .Any(conclusion => conclusion.IsCertain && conclusion.Judgement.Then is Consequence.Bar);
}
