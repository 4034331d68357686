using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Tests.Weeding.Trade;

/// <summary>
/// The model beside figures of the trade. Six common weeds in a year in the south-east; a usual herbicide programme is
/// taken to stop 70 % of the seedlings on average, from nine in ten after an application to half of them before the
/// next.
/// </summary>
public sealed class LabourFiguresTests
{
    private const double UsualProgramme = 0.7;

    private static WeedingSetup Six => Yard.Setup(Yard.SixWeeds);

    private static WeedingSetup SixUnderHerbicide => Six with { Control = UsualProgramme };

    // Common practice: two-week instead of eight-week rounds save 50 to 70 % of the season's labour, same herbicide.
    [Fact]
    public void Two_week_instead_of_eight_week_rounds_save_50_to_70_percent() =>
        Assert.InRange(Saving(SixUnderHerbicide, 8, 2), 0.5, 0.7);

    // ncsu-hortintl: weeding every 2 to 3 weeks saves about 40 % of the labour. What it is held against is not said;
    // here it is rounds of six weeks.
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    public void Rounds_of_two_to_three_weeks_save_about_40_percent(int interval) =>
        Assert.InRange(Saving(SixUnderHerbicide, 6, interval), 0.3, 0.5);

    // ncsu-hortintl: 2 to 3 weeks are recommended.
    [Fact]
    public void The_cheapest_interval_is_two_or_three_weeks()
    {
        foreach (WeedingSetup setup in (WeedingSetup[])[Six, SixUnderHerbicide])
        {
            WeedingPlan plan = setup.Plan(Yard.Numbers, 1).Value!;
            IntervalComparison compared = IntervalComparison
                .Of(plan, IntervalComparison.UsualIntervals, Yard.Wage)
                .Value!;
            Assert.InRange(compared.Cheapest.Season.IntervalWeeks, 2, 3);
        }
    }

    // Common practice: mulches save 30 to 50 % of the cost of hand weeding. At rounds of two weeks, material not
    // counted.
    [Theory]
    [InlineData("rice-hulls", 2)]
    [InlineData("bark", 5)]
    public void A_mulch_saves_30_to_50_percent_of_the_weeding(string kind, int depth)
    {
        double bare = Yard.Run(Six, 2).CostUsd(Yard.Wage);
        double mulched = Yard.Run(Six with { Mulch = new PotMulch(kind, depth) }, 2).CostUsd(Yard.Wage);
        Assert.InRange(1 - (mulched / bare), 0.3, 0.5);
    }

    // Common practice: weeds under about an inch across can wait for the next two-week round.
    [Fact]
    public void Weeds_under_an_inch_can_wait_two_weeks_but_not_four()
    {
        WeedingSetup waiting = SixUnderHerbicide with { SmallestPulledCm = 2.5, Missed = 0 };
        Assert.Equal(0, Yard.Run(waiting, 2).SeedsShed);
        // All but eclipta, which needs six weeks.
        Assert.All(Yard.Run(waiting, 4).Weeds, weed => Assert.Equal(weed.Weed != "eclipta", weed.SeedsShed > 0));
        double all = Yard.Run(SixUnderHerbicide, 2).Hours;
        Assert.InRange(Yard.Run(SixUnderHerbicide with { SmallestPulledCm = 2.5 }, 2).Hours, 0.8 * all, 1.2 * all);
    }

    // neal-cost-trial: 42 cents a pot weeded by hand only, 17 with herbicide and hand weeding. The wage of the trial is
    // not given; here it is 18 dollars.
    [Theory]
    [InlineData(0, 42)]
    [InlineData(UsualProgramme, 17)]
    public void A_pot_costs_what_the_trial_says(double control, double cents) =>
        Assert.InRange(CentsPerPot(Six with { Control = control }, 3), 0.7 * cents, 1.3 * cents);

    // neal-cost-trial: 2 cents a pot under a highly effective herbicide; here 98 % and a round each twelve weeks. The
    // model comes out above the trial: it charges the walk of every round and a clearing at the end.
    [Fact]
    public void A_pot_under_a_highly_effective_herbicide_costs_a_few_cents() =>
        Assert.InRange(CentsPerPot(Six with { Control = 0.98 }, 12), 1, 6);

    private static double Saving(WeedingSetup setup, int from, int to) =>
        1 - (Yard.Run(setup, to).Hours / Yard.Run(setup, from).Hours);

    private static double CentsPerPot(WeedingSetup setup, int interval) =>
        Yard.Run(setup, interval).CostUsd(Yard.Wage) / 1000 * 100;
}
