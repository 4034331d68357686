using WeedAdvisor.Planning.Money;

namespace WeedAdvisor.Planning.Tests.Money.Trade;

public class BreakEvenTradeTests
{
    // Penn State open textbook ACCTG 211, 7.2 (psu-breakeven): fixed 20,000, price 400, variable 250, margin 150.
    [Fact]
    public void The_textbook_breaks_even_at_133_and_a_third_units_and_sells_134()
    {
        Assert.Equal(133.33m, Math.Round(BreakEvens.Units(20_000, 400, 250)!.Value, 2));
        Assert.Equal(134m, BreakEvens.WholeUnits(20_000, 400, 250));
    }

    // The same example: with nothing sold the fixed 20,000 are lost; each unit earns 150 of it back.
    [Fact]
    public void The_textbook_loses_its_fixed_cost_with_nothing_sold_and_earns_150_with_each() =>
        Assert.Equal(20_000m, BreakEvens.Units(20_000, 400, 250)!.Value * 150, 6);

    // Cornell Cooperative Extension (higgins-breakeven): below the variable cost every unit sold deepens the loss.
    [Theory]
    [InlineData(249)]
    [InlineData(250)]
    public void No_number_of_units_helps_when_the_price_does_not_cover_the_variable_cost(int price) =>
        Assert.Null(BreakEvens.Units(20_000, price, 250));
}
