using CsCheck;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;

namespace WeedAdvisor.Planning.Tests.Money;

public class SensitivityTests
{
    private static readonly Gen<UncertainInput> s_input = Gen.Select(
            Gen.Int[0, 1000],
            Gen.Int[0, 1000],
            Gen.Int[0, 1000],
            Gen.Int[0, 9]
        )
        .Select((low, up, more, name) => new UncertainInput($"input {name}", "usd", low, low + up, low + up + more));

    [Fact]
    public void At_base_it_is_the_base() =>
        s_input
            .Array[0, 6]
            .Sample(inputs =>
                Assert.Equal(inputs.Sum(input => input.Base), Sensitivity.Of([.. inputs], values => values.Sum()).Base)
            );

    [Fact]
    public void Each_input_moves_alone_from_its_low_to_its_high_end() =>
        s_input
            .Array[1, 6]
            .Sample(inputs =>
            {
                var sensitivity = Sensitivity.Of([.. inputs], values => values.Sum());
                Assert.Equal(inputs.Length, sensitivity.Swings.Length);
                Assert.All(sensitivity.Swings, swing =>
                {
                    Assert.Equal(sensitivity.Base - swing.Input.Base + swing.Input.Low, swing.AtLow);
                    Assert.Equal(sensitivity.Base - swing.Input.Base + swing.Input.High, swing.AtHigh);
                });
            });

    [Fact]
    public void The_largest_swing_stands_first_whatever_the_order() =>
        s_input
            .Array[1, 6]
            .Sample(inputs =>
            {
                UncertainInput[] named = [.. inputs.DistinctBy(input => input.Name)];
                var there = Sensitivity.Of([.. named], values => 1_000_000 - values.Sum());
                var back = Sensitivity.Of([.. named.Reverse()], values => 1_000_000 - values.Sum());
                Assert.Equal(there.Swings, there.Swings.OrderByDescending(swing => swing.Size));
                Assert.Equal(there.Swings.AsEnumerable(), back.Swings);
            });

    [Fact]
    public void A_base_outside_its_range_is_refused() =>
        Assert.Throws<ArgumentException>(() =>
            Sensitivity.Of([new UncertainInput("wage", "usd/h", 10, 9, 20)], values => values[0])
        );
}
