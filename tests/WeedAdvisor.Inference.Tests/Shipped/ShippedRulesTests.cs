using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Assembly;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Engine;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Inference.Tests.Fixtures;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>The rules that ship, on random visits.</summary>
public class ShippedRulesTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly Gen<VisitArea> s_areas = new RandomVisits(s_knowledge).Area;

    [Fact]
    public void Engine_and_condition_tree_agree_on_random_visits_changed_live() =>
        Compare((byTree, byEngine) => Assert.Equal(Told.By(byTree), Told.By(byEngine.All())), Sizes.Of(25, 2000));

    [Fact]
    public void Only_arguments_and_cautions_on_what_is_barred_for_good_wait_until_they_are_asked_for() =>
        Compare(
            (byTree, byEngine) =>
            {
                HashSet<string> never = [.. byTree.Where(IsForGood).Select(bar => bar.Action!.Id)];
                var read = byTree.Where(one =>
                    one.Judgement.Then is Consequence.Bar || one.Action is null || !never.Contains(one.Action.Id)
                );
                Assert.Equal(Told.By(read), Told.By(byEngine.ForAdvice()));
            },
            Sizes.Of(10, 500)
        );

    [Fact]
    public void Reasons_that_are_asked_for_later_say_what_they_would_have_said_at_once()
    {
        var catalogue = CatalogueFacts.Of(s_knowledge);
        var reasons = new Reasons(s_knowledge);
        s_areas.Sample(
            area =>
            {
                var day = AreaCase.Alone(RandomVisits.Day, area);
                var atOnce = TreeInference.Conclude(
                    s_knowledge.Judgements,
                    [.. catalogue, .. AreaFacts.Of(s_knowledge, day)]
                );
                AreaAdvice advice = ShippedRules.On(day);
                Assert.Equal(
                    atOnce.Select(one => (one.Judgement.Id, one.Action?.Id, reasons.SaidOf(one).Text)),
                    advice.AllConclusions().Select(one => (one.Judgement, one.Action, one.Text))
                );
            },
            iter: Sizes.Of(10, 500)
        );
    }

    // Each thread keeps one session and changes it from visit to visit: the live path and the fresh one at once.
    private static void Compare(Action<ImmutableArray<Conclusion>, AreaConclusions> compare, int samples)
    {
        var catalogue = CatalogueFacts.Of(s_knowledge);
        RuleEngine engine = RuleEngine.Of(s_knowledge.Judgements, catalogue);
        using var sessions = new ThreadLocal<EngineSession>(engine.Open);
        s_areas.Sample(
            area =>
            {
                var facts = AreaFacts.Of(s_knowledge, AreaCase.Alone(RandomVisits.Day, area));
                compare(
                    TreeInference.Conclude(s_knowledge.Judgements, [.. catalogue, .. facts]),
                    sessions.Value!.Change(facts)
                );
            },
            iter: samples
        );
    }

    private static bool IsForGood(Conclusion one) =>
        one.IsCertain && one.Judgement.Then is Consequence.Bar { Lift: Lift.Never };
}
