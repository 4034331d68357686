using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Engine;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Inference.Tests.Fixtures;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Engine;

/// <summary>
/// The engine infers, the tree explains: both have to come to the same conclusions, whatever the rules and the case.
/// </summary>
public class EngineAndTreeTests
{
    private static readonly Gen<(ImmutableArray<Judgement> Rules, VisitArea[] Areas)> s_cases = Gen.Select(
        RandomCases.Rules,
        RandomCases.Area.Array[3]
    );

    [Fact]
    public void Agree_on_random_rules_and_random_areas() =>
        s_cases.Sample(
            one =>
            {
                KnowledgeBase knowledge = SmallKnowledge.Of(one.Rules);
                RuleEngine engine = RuleEngine.Of(knowledge.Judgements, CatalogueFacts.Of(knowledge));
                foreach (VisitArea area in one.Areas)
                    Assert.Equal(
                        ByTree(knowledge, area),
                        Told.By(engine.Open().Change(FactsOf(knowledge, area)).All())
                    );
            },
            iter: Sizes.Of(300, 2000),
            print: Describe.Case
        );

    [Fact]
    public void A_live_change_leaves_what_a_fresh_start_would_give() =>
        s_cases.Sample(
            one =>
            {
                KnowledgeBase knowledge = SmallKnowledge.Of(one.Rules);
                EngineSession session = RuleEngine.Of(knowledge.Judgements, CatalogueFacts.Of(knowledge)).Open();
                foreach (VisitArea area in (VisitArea[])[.. one.Areas, one.Areas[0]])
                    Assert.Equal(ByTree(knowledge, area), Told.By(session.Change(FactsOf(knowledge, area)).All()));
            },
            iter: Sizes.Of(200, 2000),
            print: Describe.Case
        );

    [Fact]
    public void The_order_of_rules_and_facts_does_not_matter() =>
        s_cases.Sample(
            one =>
            {
                KnowledgeBase knowledge = SmallKnowledge.Of(one.Rules);
                ImmutableArray<ActionFact> catalogue = CatalogueFacts.Of(knowledge);
                RuleEngine backwards = RuleEngine.Of(one.Rules.Reverse(), [.. catalogue.Reverse()]);
                foreach (VisitArea area in one.Areas)
                    Assert.Equal(
                        ByTree(knowledge, area),
                        Told.By(backwards.Open().Change([.. FactsOf(knowledge, area).Reverse()]).All())
                    );
            },
            iter: Sizes.Of(100, 1000),
            print: Describe.Case
        );

    [Fact]
    public void No_condition_has_to_be_interpreted() =>
        s_cases.Sample(
            one =>
                Assert.Equal(
                    0,
                    RuleEngine.Of(one.Rules, CatalogueFacts.Of(SmallKnowledge.Of(one.Rules))).InterpretedConditions
                ),
            iter: Sizes.Of(20, 200),
            print: Describe.Case
        );

    private static string ByTree(KnowledgeBase knowledge, VisitArea area) =>
        Told.By(
            TreeInference.Conclude(knowledge.Judgements, [.. CatalogueFacts.Of(knowledge), .. FactsOf(knowledge, area)])
        );

    private static ImmutableArray<Fact> FactsOf(KnowledgeBase knowledge, VisitArea area) =>
        AreaFacts.Of(knowledge, AreaCase.Alone(RandomCases.Day, area));
}
