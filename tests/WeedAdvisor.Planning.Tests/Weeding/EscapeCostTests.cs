using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Tests.Weeding;

public sealed class EscapeCostTests
{
    // Where there is room, a season is the sum of its plants: with weekly rounds it must come to the same hours.
    [Theory]
    [InlineData("spurge-spotted")]
    [InlineData("woodsorrel-yellow")]
    [InlineData("liverwort")]
    public void A_season_is_the_sum_of_what_its_weeds_cost_one_by_one(string weed)
    {
        WeedTraits traits = Yard.Traits(weed);
        const int Weeks = 30,
            Start = 18;
        double sum = Enumerable
            .Range(0, Weeks)
            .Sum(week =>
                traits.ExpectedEmergence(Start + week)
                * Of(traits, Start + week, interval: 1, horizon: Weeks - week).Hours
            );
        var plan = new WeedingPlan
        {
            Weeds = [PlannedWeed.Free(traits)],
            FirstWeek = Start,
            Weeks = Weeks,
            IntervalWeeks = 1,
            Missed = 0.1,
            SmallestPulledCm = 1,
            Numbers = Yard.Roomy,
        };
        Assert.Equal(Yard.Run(plan).PullingHours, sum, 9);
    }

    [Fact]
    public void An_escape_costs_more_the_longer_the_interval()
    {
        double[] usd =
        [
            .. IntervalComparison.UsualIntervals.Select(interval =>
                Of(Yard.Traits("spurge-spotted"), 20, interval).Usd
            ),
        ];
        Assert.Equal(usd.Order(), usd);
        Assert.True(usd[^1] > 10 * usd[1]);
    }

    [Fact]
    public void Control_in_the_weeks_to_come_makes_an_escape_cheaper() =>
        Assert.True(
            Of(Yard.Traits("spurge-spotted"), 20, 6, control: 0.9).Hours
                < Of(Yard.Traits("spurge-spotted"), 20, 6).Hours / 2
        );

    [Fact]
    public void One_without_offspring_costs_at_most_one_pull()
    {
        EscapeCost cost = Of(Yard.Traits("spurge-spotted"), 20, 2, control: 1);
        Assert.Equal(0, cost.Descendants);
        Assert.InRange(cost.Hours, 0.5 * 3 / 3600, 3.5 / 3600);
        Assert.Equal(cost.Hours * Yard.Wage, cost.Usd, 12);
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        WeedTraits traits = Yard.Traits("spurge-spotted");
        Assert.False(EscapeCost.Of(traits, 20, 0, 0.1, 1, 18, Yard.Numbers).IsGood);
        Assert.False(EscapeCost.Of(traits, 52, 2, 0.1, 1, 18, Yard.Numbers).IsGood);
        Assert.False(EscapeCost.Of(traits, 20, 2, 1.1, 1, 18, Yard.Numbers).IsGood);
        Assert.False(EscapeCost.Of(traits, 20, 2, 0.1, 1, -1, Yard.Numbers).IsGood);
        Assert.False(EscapeCost.Of(traits, 20, 2, 0.1, 1, 18, Yard.Numbers, control: 2).IsGood);
        Assert.False(EscapeCost.Of(traits, 20, 2, 0.1, 1, 18, Yard.Numbers, horizonWeeks: -1).IsGood);
        Assert.Throws<ArgumentOutOfRangeException>(() => traits.ExpectedEmergence(52));
    }

    private static EscapeCost Of(WeedTraits traits, int week, int interval, double control = 0, int horizon = 26) =>
        EscapeCost.Of(traits, week, interval, 0.1, 1, Yard.Wage, Yard.Roomy, control, horizon).Value!;
}
