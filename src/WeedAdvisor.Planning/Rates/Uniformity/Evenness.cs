using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Uniformity;

/// <summary>Mean and spread of what pans caught.</summary>
/// <param name="Mean">The mean.</param>
/// <param name="Deviations">The sum of the squared differences from the mean.</param>
/// <param name="Deviation">The standard deviation of a sample: the squares are divided by the count less one.</param>
/// <param name="Least">The smallest.</param>
/// <param name="Most">The largest.</param>
internal sealed record Evenness(decimal Mean, decimal Deviations, decimal Deviation, decimal Least, decimal Most)
{
    /// <summary>Coefficient of variation: standard deviation ÷ mean.</summary>
    public decimal Variation => Deviation / Mean;

    /// <summary>Works it out.</summary>
    /// <param name="values">Two values or more, of which one is above zero and none below.</param>
    public static Evenness Of(ImmutableArray<decimal> values)
    {
        decimal mean = values.Sum() / values.Length;
        decimal squares = values.Sum(value => (value - mean) * (value - mean));
        return new Evenness(mean, squares, SquareRoot.Of(squares / (values.Length - 1)), values.Min(), values.Max());
    }
}
