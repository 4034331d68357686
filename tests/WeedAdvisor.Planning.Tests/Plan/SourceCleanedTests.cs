using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Tests.Season.Programme;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Plan;

public sealed class SourceCleanedTests
{
    private static readonly AreaCase s_found = AreaCase.Alone(
        Years.DemoDay,
        Years.DemoYard with
        {
            Answers = Years.DemoYard.Answers.SetItem("surroundings", new Answer.Words(WordSet.Of("weedy-seeding"))),
        }
    );

    private static readonly AreaPlan s_plan = PlanSearch.Of(
        PlanCase.Of(ShippedRules.Advisor, s_found, new PlanRequest()).Value!,
        new PlanEffort(),
        default
    );

    [Fact]
    public void A_rival_that_takes_more_hours_than_there_are_saves_nothing()
    {
        Assert.NotEmpty(s_plan.RunnersUp);
        decimal alone = Saves(s_plan with { RunnersUp = [] }, new PlanRequest());
        Assert.Equal(alone, Saves(s_plan, new PlanRequest { HoursPerWeek = 0.01m }));
        Assert.True(Saves(s_plan, new PlanRequest()) >= alone);
        Assert.True(alone > 0);
    }

    private static decimal Saves(AreaPlan plan, PlanRequest limits) =>
        SourceCleaned.Of(ShippedRules.Advisor, s_found, plan, s_plan.Best!, limits)!.SavesUsd;
}
