using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Reports.Lessons;

namespace WeedAdvisor.Reports.Tests.Lessons;

/// <summary>Kendall's tau-b, held against a published value and against its own definition.</summary>
public sealed class RankAgreementTests
{
    // SciPy reference documentation, scipy.stats.kendalltau, its example: two lists of five with ties in both.
    [Fact]
    public void The_example_of_a_reference_library_comes_to_its_value() =>
        Assert.Equal(-0.47140452079103173, RankAgreement.TauB([12, 2, 1, 12, 2], [1, 4, 7, 1, 0])!.Value, 15);

    // M. G. Kendall, Rank Correlation Methods (1948), chapter 3: ten objects with ties in both rankings, S = 33, tau-b
    // 0.859. Ranks are doubled here so that shared ranks are whole numbers. From memory: check against the book.
    [Fact]
    public void The_worked_example_of_the_book_comes_to_its_value() =>
        Assert.Equal(
            0.859,
            RankAgreement.TauB([2, 5, 5, 9, 9, 13, 13, 16, 19, 19], [2, 4, 9, 9, 9, 9, 16, 16, 16, 20])!.Value,
            0.0005
        );

    [Fact]
    public void The_same_order_is_1_the_reverse_minus_1_and_ties_alone_are_nothing()
    {
        Assert.Equal(1, RankAgreement.TauB([1, 2, 3, 4], [10, 20, 30, 40]));
        Assert.Equal(-1, RankAgreement.TauB([1, 2, 3, 4], [4, 3, 2, 1]));
        Assert.Null(RankAgreement.TauB([1, 1, 1], [1, 2, 3]));
        Assert.Null(RankAgreement.TauB([], []));
        Assert.Throws<ArgumentException>(() => RankAgreement.TauB([1], [1, 2]));
    }

    // By the definition with signs: the sum of products over the root of the sums of squares (Kendall 1945).
    [Fact]
    public void It_is_the_correlation_of_the_signs_of_all_pairs() =>
        Gen.Select(Gen.Int[0, 5], Gen.Int[0, 5])
            .Array[2, 12]
            .Sample(
                pairs =>
                {
                    double products = 0,
                        one = 0,
                        other = 0;
                    foreach ((int x, int y) in pairs)
                    {
                        foreach ((int x2, int y2) in pairs)
                        {
                            products += Math.Sign(x - x2) * Math.Sign(y - y2);
                            one += Math.Abs(Math.Sign(x - x2));
                            other += Math.Abs(Math.Sign(y - y2));
                        }
                    }

                    double? tau = RankAgreement.TauB(
                        [.. pairs.Select(pair => pair.Item1)],
                        [.. pairs.Select(pair => pair.Item2)]
                    );
                    if (one == 0 || other == 0)
                        Assert.Null(tau);
                    else
                        Assert.Equal(products / Math.Sqrt(one * other), tau!.Value, 9);
                },
                iter: Sizes.Of(200, 5000)
            );
}
