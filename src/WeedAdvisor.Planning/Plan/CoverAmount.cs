using System.Globalization;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Plan;

/// <summary>How much of a cover a plan lays on all pots, by the sum <c>rate mulch volume</c>.</summary>
/// <param name="DepthCm">How deep it lies, centimetres, as its record has it.</param>
/// <param name="CubicM">How much that is, cubic metres.</param>
public sealed record CoverAmount(Span DepthCm, Span CubicM)
{
    /// <summary>The amount; null for what is not laid to a depth.</summary>
    /// <param name="year">The year.</param>
    /// <param name="cover">The cover.</param>
    public static CoverAmount? Of(YearCase year, Practice cover) =>
        cover.CostOn(year.Costed.Ground)?.DepthCm is { } depth
        && Volume(year, depth.Low) is { } low
        && Volume(year, depth.High) is { } high
            ? new CoverAmount(depth, new Span(low, high))
            : null;

    private static decimal? Volume(YearCase year, decimal depthCm)
    {
        string Typed(decimal value) => Figures.Of(value, 12);
        RateAnswer? answer = UseAmounts
            .Run(
                "mulch",
                "volume",
                null,
                ("depth", Typed(depthCm) + " cm"),
                ("pot-width", Typed(year.Block.WidthCm.Value) + " cm"),
                ("pots", year.Pots.ToString(CultureInfo.InvariantCulture))
            )
            .Value;
        return answer?["volume"].Value.To("m3").Value;
    }
}
