using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Tests.Money.Trade;

/// <summary>Iowa State Univ. Extension, file A3-29: estimating farm machinery costs (isu-a3-29).</summary>
public class CapitalRecoveryTradeTests
{
    // Example A of isu-a3-29: 8 % less 3 % inflation.
    [Fact]
    public void Eight_percent_less_three_of_inflation_is_five() =>
        Assert.Equal(0.05m, CapitalRecovery.RealRate(nominal: 0.08m, inflation: 0.03m));

    // Example A of isu-a3-29: list 110,000, bought for 93,500, salvage 23 % of list, so 68,200 are lost in 15 years.
    [Fact]
    public void Without_interest_the_published_loss_of_value_is_spread_over_the_life()
    {
        decimal salvage = 0.23m * 110_000;
        Assert.Equal(25_300m, salvage);
        Assert.Equal(68_200m, Yearly(93_500, salvage, rate: 0, years: 15) * 15, 6);
    }

    // Factor for 5 % and 15 years printed as .096; the yearly cost of example A with it, 7,812, is from memory.
    [Fact]
    public void Example_A_with_the_printed_factor()
    {
        Assert.Equal(0.096m, Math.Round(CapitalRecovery.Factor(0.05m, 15), 3));
        Assert.Equal(7_812m, Math.Round((68_200m * 0.096m) + (25_300m * 0.05m)));
        // The printed factor has three decimals: at most half a thousandth of 68,200 lies between.
        Assert.InRange(Yearly(93_500, 25_300, 0.05m, 15), 7_812 - 34.1m, 7_812 + 34.1m);
    }

    // Example A with the factor unrounded, worked out by hand from the formula: 7,835.54.
    [Fact]
    public void Example_A_with_the_whole_factor() =>
        Assert.Equal(7_835.54m, Math.Round(Yearly(93_500, 25_300, 0.05m, 15), 2));

    // Example B of isu-a3-29: list 150,000, bought for 130,000, 8 %, 15 years; factor .117; the yearly 13,934 is from
    // memory.
    [Fact]
    public void Example_B_with_the_printed_factor()
    {
        decimal salvage = 0.23m * 150_000;
        Assert.Equal(0.117m, Math.Round(CapitalRecovery.Factor(0.08m, 15), 3));
        Assert.Equal(
            13_934m,
            Math.Round(((130_000 - salvage) * 0.117m) + (salvage * 0.08m), MidpointRounding.AwayFromZero)
        );
        Assert.InRange(Yearly(130_000, salvage, 0.08m, 15), 13_934 - 47.8m, 13_934 + 47.8m);
    }

    private static decimal Yearly(decimal purchase, decimal salvage, decimal rate, int years) =>
        CapitalRecovery.YearlyUsd(purchase, salvage, rate, years);
}
