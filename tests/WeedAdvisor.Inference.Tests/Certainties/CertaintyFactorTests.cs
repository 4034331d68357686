using CsCheck;
using WeedAdvisor.Inference.Certainties;

namespace WeedAdvisor.Inference.Tests.Certainties;

public class CertaintyFactorTests
{
    private static readonly Gen<double> s_factor = Gen.Double[-1, 1];

    // Published worked values: G. S. Novak Jr., lecture notes on EMYCIN's certainty factors, University of Texas at
    // Austin (www.cs.utexas.edu/~novak/cs378226.html): two rules with 0.5 and 0.6 give 0.8, in either order.
    [Theory]
    [InlineData(0.5, 0.6, 0.8)]
    [InlineData(0.6, 0.5, 0.8)]
    // The formulas themselves: Shortliffe & Buchanan 1975 (same sign), van Melle 1980 (mixed), worked here by hand.
    [InlineData(-0.5, -0.6, -0.8)]
    [InlineData(0.8, -0.3, 0.5 / 0.7)]
    [InlineData(0.4, -0.4, 0)]
    [InlineData(1, 0.3, 1)]
    [InlineData(1, -0.3, 1)]
    [InlineData(0, 0.7, 0.7)]
    [InlineData(0, -0.7, -0.7)]
    public void Two_factors_combine_as_published(double left, double right, double together) =>
        Assert.Equal(together, CertaintyFactor.Combine(left, right), 12);

    [Fact]
    public void Complete_contradiction_counts_nothing() => Assert.Equal(0, CertaintyFactor.Combine(1, -1));

    [Fact]
    public void No_argument_is_no_certainty() => Assert.Equal(0, CertaintyFactor.Combine([]));

    [Theory]
    [InlineData(1.01)]
    [InlineData(-1.01)]
    [InlineData(double.NaN)]
    public void What_is_not_a_certainty_factor_is_refused(double factor) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CertaintyFactor.Combine(factor, 0.5));

    [Fact]
    public void The_result_is_a_certainty_factor() =>
        s_factor.Array[0, 8].Sample(factors => CertaintyFactor.Combine(factors) is >= -1 and <= 1);

    [Fact]
    public void Order_does_not_change_one_bit() =>
        s_factor
            .Array[0, 8]
            .SelectMany(factors => Gen.Shuffle(factors.ToArray()), (factors, mixed) => (factors, mixed))
            .Sample(both => CertaintyFactor.Combine(both.factors).Equals(CertaintyFactor.Combine(both.mixed)));

    [Fact]
    public void One_more_argument_for_never_lowers_and_one_against_never_raises() =>
        Gen.Select(s_factor.Array[0, 6], Gen.Double[0, 1])
            .Sample(
                (factors, more) =>
                {
                    double before = CertaintyFactor.Combine(factors);
                    return CertaintyFactor.Combine([.. factors, more]) >= before - 1e-12
                        && CertaintyFactor.Combine([.. factors, -more]) <= before + 1e-12;
                }
            );

    [Fact]
    public void Same_sign_arguments_combine_as_independent_chances_do() =>
        Gen.Double[0, 1]
            .Array[1, 6]
            .Sample(factors =>
                Math.Abs(
                    CertaintyFactor.Combine(factors) - (1 - factors.Aggregate(1.0, (rest, one) => rest * (1 - one)))
                ) < 1e-9
            );
}
