using CsCheck;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Tests.Money;

public class CapitalRecoveryTests
{
    private const decimal Near = 1e-18m;

    private static readonly Gen<decimal> s_rate = Gen.Int[0, 10_000].Select(rate => rate / 10_000m);
    private static readonly Gen<int> s_years = Gen.Int[1, CapitalRecovery.LongestLife - 1];

    [Fact]
    public void Without_interest_each_year_carries_its_share() =>
        s_years.Sample(years => Assert.InRange(CapitalRecovery.Factor(0, years) - (1m / years), -Near, Near));

    [Fact]
    public void The_factor_falls_with_the_years() =>
        Gen.Select(s_rate, s_years)
            .Sample(
                (rate, years) =>
                {
                    decimal now = CapitalRecovery.Factor(rate, years),
                        later = CapitalRecovery.Factor(rate, years + 1);

                    // It falls towards the rate of interest; after many years the last digits no longer tell the two
                    // apart.
                    Assert.True(later < now || (later == now && now - rate < 0.000_000_000_000_000_000_001m));
                }
            );

    [Fact]
    public void The_factor_rises_with_the_interest() =>
        Gen.Select(s_rate, s_years)
            .Sample(
                (rate, years) =>
                {
                    if (rate < 1)
                        Assert.True(
                            CapitalRecovery.Factor(rate + 0.0001m, years) > CapitalRecovery.Factor(rate, years)
                        );
                }
            );

    // The closed form i(1+i)^n / ((1+i)^n - 1), reckoned in floating point: another way to the same number.
    [Fact]
    public void The_factor_is_the_closed_form() =>
        Gen.Select(Gen.Int[1, 10_000].Select(rate => rate / 10_000m), s_years)
            .Sample(
                (rate, years) =>
                {
                    double i = (double)rate;
                    double growth = Math.Pow(1 + i, years);
                    double closed = i * growth / (growth - 1);
                    Assert.Equal(1, (double)CapitalRecovery.Factor(rate, years) / closed, 1e-9);
                }
            );

    // The payments of all years, put back to today, with the salvage, are the price.
    [Fact]
    public void The_payments_are_worth_the_price() =>
        Gen.Select(s_rate, Gen.Int[1, 30], Gen.Int[0, 100_000], Gen.Int[0, 100])
            .Sample(
                (rate, years, price, part) =>
                {
                    decimal salvage = price * part / 100m;
                    decimal payment = CapitalRecovery.YearlyUsd(price, salvage, rate, years);
                    decimal worth = 0;
                    decimal ofYear = 1;
                    for (int year = 1; year <= years; year++)
                    {
                        ofYear /= 1 + rate;
                        worth += payment * ofYear;
                    }

                    Assert.Equal(price, worth + (salvage * ofYear), 12);
                }
            );

    [Fact]
    public void Each_use_carries_its_part() => Assert.Equal(12.5m, CapitalRecovery.EachUseUsd(100, 8));

    [Theory]
    [InlineData(-0.01, 10)]
    [InlineData(1.01, 10)]
    [InlineData(0.05, 0)]
    [InlineData(0.05, 101)]
    public void Outside_its_range_it_is_refused(double rate, int years) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CapitalRecovery.Factor((decimal)rate, years));

    [Fact]
    public void Salvage_above_the_price_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CapitalRecovery.YearlyUsd(100, 101, 0.05m, 10));

    [Fact]
    public void What_is_never_used_has_no_cost_of_a_use() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CapitalRecovery.EachUseUsd(100, 0));
}
