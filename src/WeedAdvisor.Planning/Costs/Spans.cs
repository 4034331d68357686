using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Costs;

/// <summary>Sums over ranges: low with low, high with high.</summary>
internal static class Spans
{
    /// <summary>A range times a factor of at least 0.</summary>
    public static Span Times(this Span range, decimal factor) => new(range.Low * factor, range.High * factor);

    /// <summary>Two ranges together.</summary>
    public static Span Plus(this Span one, Span other) => new(one.Low + other.Low, one.High + other.High);

    /// <summary>All the amounts together.</summary>
    public static Span Sum(this IEnumerable<CostLine> lines) =>
        lines.Aggregate(new Span(0, 0), (sum, line) => sum.Plus(line.Amount));
}
