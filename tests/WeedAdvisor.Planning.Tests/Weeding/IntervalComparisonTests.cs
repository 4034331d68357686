using CsCheck;
using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Tests.Weeding;

public sealed class IntervalComparisonTests
{
    [Fact]
    public void The_cheapest_costs_no_more_than_any_other() =>
        Gen.Select(RandomPlans.Any, Gen.Int[1, 52].Array[1, 5], Gen.Double[0, 60])
            .Sample(
                (plan, intervals, wage) =>
                {
                    IntervalComparison compared = IntervalComparison.Of(plan, intervals, wage).Value!;
                    return compared.Intervals.All(one => one.Usd >= compared.Cheapest.Usd);
                }
            );

    [Fact]
    public void The_cheapest_interval_changes_where_it_is_said_to_change() =>
        Gen.Select(RandomPlans.Any, Gen.Double[0, 60])
            .Sample(
                (plan, wage) =>
                {
                    IntervalComparison compared = IntervalComparison
                        .Of(plan, IntervalComparison.UsualIntervals, wage)
                        .Value!;
                    // From the changes alone: the interval above the last change below the wage.
                    int told = compared.WageChanges.LastOrDefault(change => change.WageUsdPerHour < wage)?.AboveWeeks
                        ?? compared.WageChanges.FirstOrDefault()?.BelowWeeks
                        ?? compared.Cheapest.Season.IntervalWeeks;
                    decimal toldUsd = compared.Intervals.Single(one => one.Season.IntervalWeeks == told).Usd;
                    return toldUsd <= compared.Cheapest.Usd * 1.000000001m;
                }
            );

    [Fact]
    public void Intervals_come_shortest_first_and_once() =>
        Assert.Equal(
            [2, 4, 8],
            IntervalComparison
                .Of(Plan(), [8, 2, 4, 2], Yard.Wage)
                .Value!.Intervals.Select(one => one.Season.IntervalWeeks)
        );

    [Theory]
    [InlineData(-1, 2, "An hour of labour costs 0 to 10000 US dollars, not -1.")]
    [InlineData(double.NaN, 2, "An hour of labour costs 0 to 10000 US dollars, not NaN.")]
    [InlineData(18, 0, "There are 1 to 52 whole weeks between two rounds.")]
    [InlineData(18, 53, "There are 1 to 52 whole weeks between two rounds.")]
    public void Bad_wages_and_intervals_are_refused(double wage, int interval, string refusal) =>
        Assert.Equal([refusal], IntervalComparison.Of(Plan(), [interval], wage).Refusals);

    [Fact]
    public void No_interval_is_refused() =>
        Assert.Contains(
            "no interval",
            Assert.Single(IntervalComparison.Of(Plan(), [], 18).Refusals),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(-0.1)]
    [InlineData(1.1)]
    [InlineData(double.NaN)]
    public void A_share_missed_outside_0_to_1_is_refused(double missed) =>
        Assert.Equal(
            ["The share of weeds missed lies between 0 and 100 percent."],
            WeedingRun.Of(Plan() with { Missed = missed }).Refusals
        );

    [Fact]
    public void Every_fault_of_a_plan_is_told()
    {
        WeedingPlan bad = Plan() with { Weeds = [], FirstWeek = 52, Weeks = 0, SmallestPulledCm = -1 };
        Assert.Equal(4, WeedingRun.Of(bad).Refusals.Length);
        PlannedWeed weed = Plan().Weeds[0];
        Assert.Contains("twice", Refusal(weed with { }, weed), StringComparison.Ordinal);
        Assert.Contains(
            "0 and 100 percent in every week",
            Refusal(weed with { Control = [.. Enumerable.Repeat(1.5, 52)] }),
            StringComparison.Ordinal
        );
        Assert.Contains("given for 1 weeks", Refusal(weed with { Control = [1] }), StringComparison.Ordinal);
        Assert.Contains("0 or more", Refusal(weed with { Standing = [-1] }), StringComparison.Ordinal);

        static string Refusal(params PlannedWeed[] weeds) =>
            Assert.Single(WeedingRun.Of(Plan() with { Weeds = [.. weeds] }).Refusals);
    }

    [Fact]
    public void A_weed_that_cannot_be_pulled_or_lacks_a_figure_is_refused_by_name()
    {
        Assert.Contains("cannot be pulled", Refusal("algae-crust"), StringComparison.Ordinal);
        WeedingSetup setup = Yard.Setup("spurge-spotted");
        SetupWeed weed = setup.Weeds[0];
        Assert.Contains(
            "no seeds per plant",
            Assert.Single(
                (setup with { Weeds = [weed with { Weed = weed.Weed with { SeedsPerPlant = null } }] })
                    .Plan(Yard.Numbers, 2)
                    .Refusals
            ),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "no weeks to first seed",
            Assert.Single(
                (setup with { Weeds = [weed with { Weed = weed.Weed with { WeeksToFirstSeed = null } }] })
                    .Plan(Yard.Numbers, 2)
                    .Refusals
            ),
            StringComparison.Ordinal
        );
        Assert.NotEmpty((setup with { Control = 2 }).Plan(Yard.Numbers, 2).Refusals);

        static string Refusal(string weed) => Assert.Single(Yard.Setup(weed).Plan(Yard.Numbers, 2).Refusals);
    }

    private static WeedingPlan Plan() => Yard.Setup("spurge-spotted").Plan(Yard.Numbers, 2).Value!;
}
