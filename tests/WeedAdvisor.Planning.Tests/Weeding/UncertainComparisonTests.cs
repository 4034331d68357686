using System.Collections.Immutable;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Rounds;

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
    public void The_usual_figure_lies_within_the_band()
    {
        IntervalComparison usual = IntervalComparison.Of(Year, s_intervals).Value!;
        Assert.All(Of(seed: 3).Zip(usual.Intervals), pair =>
        {
            Assert.InRange(pair.Second.Season.Hours, pair.First.Hours.Low * 0.8, pair.First.Hours.High * 1.2);
            Assert.InRange((double)pair.Second.Usd, pair.First.CostUsd.Low * 0.8, pair.First.CostUsd.High * 1.2);
        });
    }

    [Fact]
    public void A_number_that_the_grower_has_set_is_certain()
    {
        YearCase strict = Years(new YearTerms { Missed = 0.05, Weeds = ["spurge-spotted"] });
        Assert.Equal(0.05, strict.UsualSize.Missed);
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        Assert.False(UncertainComparison.Of(Year, s_intervals, 1, 0).IsGood);
        Assert.False(UncertainComparison.Of(Year, [], 1, 5).IsGood);
    }

    private static YearCase Year => Years(new YearTerms { Weeds = ["spurge-spotted", "groundsel-common"] });

    private static YearCase Years(YearTerms terms) => Yard.Year(terms);

    private static ImmutableList<UncertainInterval> Of(ulong seed) =>
        UncertainComparison.Of(Year, s_intervals, seed, 60).Value!;
}
