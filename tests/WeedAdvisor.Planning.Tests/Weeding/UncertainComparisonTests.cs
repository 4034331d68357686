using System.Collections.Immutable;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Weeding;

public sealed class UncertainComparisonTests
{
    private static readonly int[] s_intervals = [2, 4, 8];

    [Fact]
    public void The_same_seed_gives_the_same_figures_and_another_does_not()
    {
        Assert.Equal(Of(seed: 7), Of(seed: 7));
        Assert.NotEqual(Of(seed: 7), Of(seed: 8));
    }

    [Fact]
    public void Bands_are_in_order_and_shares_of_the_cheapest_sum_to_one()
    {
        ImmutableList<UncertainInterval> bands = Of(seed: 1);
        Assert.Equal(s_intervals, bands.Select(band => band.IntervalWeeks));
        Assert.All(bands, band =>
            Assert.True(band.Hours.Low < band.Hours.Middle && band.Hours.Middle < band.Hours.High)
        );
        Assert.All(bands, band => Assert.True(band.CostUsd.Low < band.CostUsd.High));
        Assert.Equal(1, bands.Sum(band => band.CheapestShare), 9);
    }

    [Fact]
    public void The_usual_figure_lies_within_the_band() =>
        Assert.All(Of(seed: 3), band =>
            Assert.InRange(Yard.Run(Setup, band.IntervalWeeks).Hours, band.Hours.Low * 0.8, band.Hours.High * 1.2)
        );

    [Fact]
    public void A_number_that_the_grower_has_set_is_certain()
    {
        WeedingNumbers known = Yard.Numbers;
        foreach (var parameter in ShippedRules.Knowledge.Weeding.Values)
            known = known.With(parameter.Id, (double)parameter.Value * 0.999);
        WeedingSetup setup = Setup with
        {
            Weeds =
            [
                .. Setup.Weeds.Select(weed => weed with { Weed = weed.Weed with { WeeksToFirstSeed = new(5, 5) } }),
            ],
        };
        DrawnBand hours = UncertainComparison
            .Of(setup, known, ShippedRules.Knowledge, s_intervals, Yard.Wage, 1, 20)
            .Value![0]
            .Hours;
        Assert.Equal(hours.Low, hours.High, 12);
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        Assert.False(
            UncertainComparison.Of(Setup, Yard.Numbers, ShippedRules.Knowledge, s_intervals, Yard.Wage, 1, 0).IsGood
        );
        Assert.False(UncertainComparison.Of(Setup, Yard.Numbers, ShippedRules.Knowledge, [0], Yard.Wage, 1, 5).IsGood);
        Assert.False(
            UncertainComparison
                .Of(Yard.Setup("algae-crust"), Yard.Numbers, ShippedRules.Knowledge, s_intervals, Yard.Wage, 1, 5)
                .IsGood
        );
    }

    private static WeedingSetup Setup => Yard.Setup("spurge-spotted", "groundsel-common") with { Control = 0.7 };

    private static ImmutableList<UncertainInterval> Of(ulong seed) =>
        UncertainComparison.Of(Setup, Yard.Numbers, ShippedRules.Knowledge, s_intervals, Yard.Wage, seed, 60).Value!;
}
