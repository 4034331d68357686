using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Engine;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Inference.Nearest;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Lines;

/// <summary>Why not: the rules that would speak for an action and come nearest.</summary>
public sealed class NearestRulesTests
{
    private static readonly Gen<(ImmutableArray<Judgement> Rules, VisitArea Area)> s_cases = Gen.Select(
        RandomCases.Rules,
        RandomCases.Area
    );

    [Fact]
    public void A_rule_is_near_and_misses_something_or_it_speaks_for_the_action() =>
        s_cases.Sample(
            one =>
            {
                KnowledgeBase knowledge = SmallKnowledge.Of(one.Rules);
                AreaCase looked = AreaCase.Alone(RandomCases.Day, one.Area);
                NearestRules nearest = NearestRules.In(knowledge, looked);
                HashSet<(string Rule, string Action)> concluded =
                [
                    .. TreeInference
                        .Conclude(
                            knowledge.Judgements,
                            [.. AreaFacts.Of(knowledge, looked), .. CatalogueFacts.Of(knowledge)]
                        )
                        .Where(conclusion => conclusion.Action is not null)
                        .Select(conclusion => (conclusion.Judgement.Id, conclusion.Action!.Id)),
                ];
                foreach (string action in knowledge.Practices.Keys.Concat(knowledge.Treatments.Keys))
                {
                    ImmutableArray<NearRule> near = nearest.Supporting(action);
                    Assert.DoesNotContain(near, rule => concluded.Contains((rule.Reason.Judgement, action)));
                    Assert.Equal(
                        near.OrderBy(rule => (rule.Missed, rule.Open)).Select(rule => (rule.Missed, rule.Open)),
                        near.Select(rule => (rule.Missed, rule.Open))
                    );
                    foreach (NearRule rule in near)
                    {
                        Assert.InRange(rule.Missed, 1, int.MaxValue);
                        Assert.Contains(rule.Reason.Matched, match => match.Truth == Truth.No);
                    }
                }
            },
            iter: Sizes.Of(100, 2000),
            print: one => string.Join('\n', one.Rules)
        );

    [Fact]
    public void An_answer_that_meets_the_one_condition_missed_makes_the_rule_speak()
    {
        AreaCase mist = AreaCase.Of(ShippedRules.Visit("mist-house-with-liverwort"), 0);
        int met = 0;
        foreach (string action in ShippedRules.Knowledge.Practices.Keys)
        {
            foreach (NearRule near in NearestRules.In(ShippedRules.Knowledge, mist).Supporting(action).Where(Misses))
            {
                MatchedTest missed = near
                    .Reason.Matched.Where(match => match.Fact == "this area")
                    .SelectMany(match => match.Tests)
                    .Single(test => test.Truth == Truth.No);
                string answer = ((AttributeTest.Word)missed.Asked!).Words.First();
                AreaCase then = mist with { Area = mist.Area.With(missed.Attribute, AreaAnswers.Word(answer)) };
                // Another answer may go with a question that the new one leaves out.
                if (
                    NearestRules
                        .In(ShippedRules.Knowledge, then)
                        .Supporting(action)
                        .All(other => other.Reason.Judgement != near.Reason.Judgement)
                )
                    met++;
            }
        }

        Assert.InRange(met, 10, int.MaxValue);
    }

    // One test on an answer, and nothing else, is not met.
    private static bool Misses(NearRule near) =>
        near is { Missed: 1, Open: 0 }
        && near.Reason.Matched.All(match => match.Truth == Truth.Yes || match.Fact == "this area")
        && near.Reason.Matched.SelectMany(match => match.Tests).Single(test => test.Truth == Truth.No)
            is { Asked: AttributeTest.Word { Negated: false } } only
        && ShippedRules.Knowledge.QuestionOf(only.Attribute) is { Choices.IsEmpty: false };
}
