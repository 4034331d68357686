using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Tests.Season.Support;

namespace WeedAdvisor.Planning.Tests.Season;

public class FullYearTests
{
    private static readonly ulong s_years = (ulong)Sizes.Of(4, 12);

    [Fact]
    public void The_plan_of_a_full_year_is_proven_keeps_the_rules_and_costs_what_it_says()
    {
        for (ulong seed = 0; seed < s_years; seed++)
        {
            SeasonProblem problem = RandomSeasons.Year(seed);
            SeasonPlan plan = SeasonSearch.Prepare(problem).Solve(stop: TestContext.Current.CancellationToken).Plan!;
            Assert.True(plan.Proven);
            Assert.Equal(0, plan.Gap);
            Assert.Empty(SeasonRules.Broken(problem, SeasonRules.Steps(plan)));
            Assert.Equal(plan.Total, SeasonRules.Cost(problem, SeasonRules.Steps(plan)));
        }
    }

    [Fact]
    public void No_plan_breaks_a_rule() =>
        Gen.ULong.Sample(
            seed =>
            {
                SeasonProblem problem = RandomSeasons.Year(
                    seed,
                    candidates: (int)(2 + (seed % 7)),
                    weeds: (int)(1 + (seed % 4))
                );
                SeasonPlan plan = SeasonSearch.Prepare(problem).Solve(effort: new SeasonEffort { Width = 4 }).Plan!;
                Assert.Empty(SeasonRules.Broken(problem, SeasonRules.Steps(plan)));
                Assert.Empty(SeasonRules.Missed(problem, SeasonRules.Steps(plan)));
                Assert.Equal(plan.Total, SeasonRules.Cost(problem, SeasonRules.Steps(plan)));
                Assert.True(plan.Bound <= plan.Total);
            },
            iter: Sizes.Of(600, 2000)
        );

    [Fact]
    public void A_search_that_is_stopped_bounds_the_optimum_and_says_how_far_off_it_may_be()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        for (ulong seed = 0; seed < s_years; seed++)
        {
            SeasonProblem problem = RandomSeasons.Year(seed);
            SeasonPlan best = SeasonSearch.Prepare(problem).Solve(stop: TestContext.Current.CancellationToken).Plan!;
            foreach (
                SeasonAnswer early in (SeasonAnswer[])
                    [
                        SeasonSearch.Prepare(problem).Solve(stop: stopped.Token),
                        SeasonSearch
                            .Prepare(problem)
                            .Solve(effort: new SeasonEffort { Width = 3 }, stop: TestContext.Current.CancellationToken),
                    ]
            )
            {
                SeasonPlan plan = early.Plan!;
                Assert.True(plan.Bound <= best.Total);
                Assert.True(plan.Total >= best.Total);
                Assert.Equal(plan.Total - plan.Bound, plan.Gap);
                Assert.Equal(plan.Proven, plan.Gap == 0);
            }
        }
    }

    [Fact]
    public void A_search_from_the_last_plan_finds_what_a_fresh_search_finds()
    {
        for (ulong seed = 0; seed < s_years; seed++)
        {
            SeasonProblem before = RandomSeasons.Year(seed);
            SeasonSearch first = SeasonSearch.Prepare(before);
            SeasonPlan plan = first.Solve(stop: TestContext.Current.CancellationToken).Plan!;
            if (plan.Applications.IsEmpty)
                continue;
            SeasonProblem after = before with { Wishes = before.Wishes with { Dropped = [plan.Applications[0].Name] } };
            SeasonPlan again = SeasonSearch
                .Prepare(after, near: first)
                .Solve(plan, stop: TestContext.Current.CancellationToken)
                .Plan!;
            SeasonPlan fresh = SeasonSearch.Prepare(after).Solve(stop: TestContext.Current.CancellationToken).Plan!;
            Assert.Equal(fresh.Total, again.Total);
            Assert.True(again.Total >= plan.Total);
        }
    }
}
