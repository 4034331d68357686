using CsCheck;
using WeedAdvisor.Planning.Money;

namespace WeedAdvisor.Planning.Tests.Money;

public class BroadcastLossTests
{
    private static readonly Gen<double> s_width = Gen.Double[1, 100];
    private static readonly Gen<double> s_times = Gen.Double[1, 10];

    [Fact]
    public void Wider_spacing_loses_more_and_staggered_rows_less() =>
        Gen.Select(s_width, s_times)
            .Sample(
                (width, times) =>
                {
                    double spacing = width * times;
                    Assert.True(BroadcastLoss.Square(width, spacing * 1.01) > BroadcastLoss.Square(width, spacing));
                    Assert.True(BroadcastLoss.Staggered(width, spacing) < BroadcastLoss.Square(width, spacing));
                    Assert.InRange(BroadcastLoss.Staggered(width, spacing), 0, 1);
                }
            );

    [Theory]
    [InlineData(0, 1)]
    [InlineData(2, 1)]
    [InlineData(double.NaN, 1)]
    [InlineData(1, double.NaN)]
    public void Pots_that_overlap_or_have_no_width_are_refused(double diameter, double spacing) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BroadcastLoss.Square(diameter, spacing));
}
