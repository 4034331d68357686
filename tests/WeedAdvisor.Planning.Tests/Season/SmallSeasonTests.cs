using System.Numerics;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Tests.Season.Support;

namespace WeedAdvisor.Planning.Tests.Season;

public class SmallSeasonTests
{
    private static readonly Gen<ulong> s_seed = Gen.ULong;

    [Fact]
    public void The_plan_is_the_cheapest_of_all_plans() =>
        s_seed.Sample(
            seed =>
            {
                SeasonProblem problem = RandomSeasons.Small(seed);
                List<(string Sequence, decimal Cost)> all = ExhaustiveSearch.BestOfEachSequence(problem);
                SeasonAnswer answer = SeasonSearch.Prepare(problem).Solve();
                Assert.Equal(all.Count == 0, answer.Infeasible);
                if (all.Count == 0)
                {
                    Assert.Null(answer.Plan);
                    return;
                }
                SeasonPlan plan = answer.Plan!;
                Assert.True(plan.Proven);
                Assert.Equal(all[0].Cost, plan.Total);
                Assert.Equal(plan.Total, plan.Bound);
                Assert.Empty(SeasonRules.Broken(problem, SeasonRules.Steps(plan)));
                Assert.Empty(SeasonRules.Missed(problem, SeasonRules.Steps(plan)));
                Assert.Equal(plan.Total, SeasonRules.Cost(problem, SeasonRules.Steps(plan)));
            },
            iter: Sizes.Of(800, 5000)
        );

    [Fact]
    public void A_narrow_search_bounds_the_optimum_from_below() =>
        s_seed.Sample(
            seed =>
            {
                SeasonProblem problem = RandomSeasons.Small(seed);
                List<(string Sequence, decimal Cost)> all = ExhaustiveSearch.BestOfEachSequence(problem);
                SeasonAnswer answer = SeasonSearch.Prepare(problem).Solve(effort: new SeasonEffort { Width = 1 });
                if (all.Count == 0)
                {
                    Assert.Null(answer.Plan);
                    return;
                }
                Assert.False(answer.Infeasible);
                Assert.True(answer.Bound <= all[0].Cost);
                Assert.True(answer.Plan is null || answer.Plan.Total >= all[0].Cost);
                Assert.True(answer.Plan is not { Proven: true } || answer.Plan.Total == all[0].Cost);
            },
            iter: 300
        );

    [Fact]
    public void The_runners_up_are_the_next_best_sequences() =>
        s_seed.Sample(
            seed =>
            {
                SeasonProblem problem = RandomSeasons.Small(seed);
                List<(string Sequence, decimal Cost)> all = ExhaustiveSearch.BestOfEachSequence(problem);
                SeasonSearch search = SeasonSearch.Prepare(problem);
                if (search.Solve().Plan is not { } best)
                    return;
                var next = Alternatives.Of(search, best);
                Assert.True(next.Proven);
                Assert.Equal(all.Skip(1).Take(3).Select(one => one.Cost), next.Plans.Select(plan => plan.Total));
                string[] sequences = [.. next.Plans.Prepend(best).Select(Sequence)];
                Assert.Equal(sequences.Distinct().Count(), sequences.Length);
                Assert.All(next.Plans, plan =>
                    Assert.Equal(all.First(one => one.Sequence == Sequence(plan)).Cost, plan.Total)
                );
                Assert.All(next.Plans, plan => Assert.Empty(SeasonRules.Broken(problem, SeasonRules.Steps(plan))));
                Assert.All(next.Plans, plan => Assert.Empty(SeasonRules.Missed(problem, SeasonRules.Steps(plan))));
            },
            iter: 300
        );

    [Fact]
    public void A_clash_is_a_smallest_set_of_wishes_that_no_plan_meets()
    {
        int clashes = 0;
        s_seed.Sample(
            seed =>
            {
                SeasonProblem problem = RandomSeasons.Small(seed);
                bool feasible = ExhaustiveSearch.BestOfEachSequence(problem).Count > 0;
                Clash clash = Clash.Of(problem);
                Assert.True(clash.Settled);
                Assert.Equal(feasible, clash.Wishes.IsEmpty);
                if (feasible)
                    return;
                Interlocked.Increment(ref clashes);
                Assert.Equal(SmallestClash(problem), clash.Wishes.Length);
                Assert.False(CanMeet(problem, clash.Wishes));
            },
            iter: 300
        );
        Assert.True(clashes > 20);
    }

    [Fact]
    public void The_price_of_a_rule_is_what_the_best_plan_without_it_saves() =>
        s_seed.Sample(
            seed =>
            {
                SeasonProblem problem = RandomSeasons.Small(seed);
                SeasonSearch search = SeasonSearch.Prepare(problem);
                if (search.Solve().Plan is not { } best)
                    return;
                foreach (RulePrice price in RulePrices.Of(search, best).Prices)
                {
                    decimal without = ExhaustiveSearch
                        .BestOfEachSequence(SeasonWish.Lift(problem, [price.Rule]))[0]
                        .Cost;
                    Assert.True(price.Proven);
                    Assert.Equal(best.Total - without, price.Price);
                }
            },
            iter: 150
        );

    private static string Sequence(SeasonPlan plan) =>
        ExhaustiveSearch.SequenceOf(plan.Applications.Select(one => one.Candidate));

    private static bool CanMeet(SeasonProblem problem, IEnumerable<SeasonWish> kept) =>
        ExhaustiveSearch.BestOfEachSequence(SeasonWish.Lift(problem, SeasonWish.AllOf(problem).Except(kept))).Count > 0;

    private static int SmallestClash(SeasonProblem problem)
    {
        SeasonWish[] wishes = [.. SeasonWish.AllOf(problem)];
        return Enumerable
            .Range(0, 1 << wishes.Length)
            .OrderBy(set => BitOperations.PopCount((uint)set))
            .Where(set => !CanMeet(problem, wishes.Where((_, wish) => (set & (1 << wish)) != 0)))
            .Select(set => BitOperations.PopCount((uint)set))
            .First();
    }
}
