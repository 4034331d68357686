using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Certainties;

namespace WeedAdvisor.Inference.Tests.Certainties;

/// <summary>The working goes on from step to step and ends where the advice does.</summary>
public sealed class CertaintyWorkingTests
{
    private static readonly Gen<(string Rule, double Certainty)[]> s_arguments = Gen.Select(
        Gen.Int[0, 5],
        Gen.Int[1, 100],
        (rule, percent) => ($"rule-{rule}", percent / 100.0)
    ).Array[0, 8];

    [Fact]
    public void Each_step_begins_where_the_last_ended_and_the_end_is_that_of_the_algebra() =>
        Gen.Select(s_arguments, s_arguments)
            .Sample(
                (support, against) =>
                {
                    var working = CertaintyWorking.Of(support, against);
                    foreach (
                        var side in (CertaintyStep[][])
                            [
                                [.. working.For],
                                [.. working.Against],
                            ]
                    )
                    {
                        double so = 0;
                        foreach (CertaintyStep step in side)
                        {
                            Assert.Equal(so, step.Before);
                            Assert.Equal(step.Before + step.Certainty * (1 - step.Before), step.After, 12);
                            so = step.After;
                        }

                        Assert.Equal(side.Length, side.Select(step => step.Rule).Distinct().Count());
                    }

                    // The sum by the algebra alone, in any order: 1 - product of what each leaves open.
                    double left = Open(support),
                        right = Open(against);
                    double mixed = Math.Min(left, right) >= 1 ? 0 : (left - right) / (1 - Math.Min(left, right));
                    Assert.Equal(mixed, working.Together, 1e-9);
                },
                iter: Sizes.Of(200, 5000)
            );

    private static double Open(IEnumerable<(string Rule, double Certainty)> arguments) =>
        1
        - arguments
            .GroupBy(one => one.Rule)
            .Aggregate(1.0, (rest, rule) => rest * (1 - rule.Max(one => one.Certainty)));
}
