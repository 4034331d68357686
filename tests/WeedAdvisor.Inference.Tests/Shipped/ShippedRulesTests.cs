using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Engine;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Inference.Tests.Fixtures;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>The rules that ship, on random visits.</summary>
public class ShippedRulesTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedKnowledge.Knowledge;
    private static readonly Gen<VisitArea> s_areas = new RandomVisits(s_knowledge).Area;

    [Fact]
    public void Engine_and_condition_tree_agree_on_random_visits_changed_live()
    {
        var catalogue = CatalogueFacts.Of(s_knowledge);
        RuleEngine engine = RuleEngine.Of(s_knowledge.Judgements, catalogue);
        // Each thread keeps one session and changes it from visit to visit: the live path and the fresh one at once.
        using var sessions = new ThreadLocal<EngineSession>(engine.Open);
        s_areas.Sample(
            area =>
            {
                var facts = AreaFacts.Of(s_knowledge, AreaCase.Alone(RandomVisits.Day, area));
                var byTree = TreeInference.Conclude(s_knowledge.Judgements, [.. catalogue, .. facts]);
                Assert.Equal(Told.By(byTree), Told.By(sessions.Value!.Change(facts)));
            },
            iter: Sizes.Of(150, 2000));
    }
}
