using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Reports.Plan;

/// <summary>How much of a cover has to be fetched.</summary>
internal static class CoverWords
{
    private const int Exact = 3;

    /// <summary>As it stands behind its price; nothing for what is not laid to a depth.</summary>
    public static string Fetched(YearCase year, Practice measure) =>
        CoverAmount.Of(year, measure) is { } amount
            ? $"; fetch {Range(amount.CubicM)} cubic metres ({Range(InYards(amount.CubicM))} cubic yards) for a "
                + $"layer of {Range(amount.DepthCm)} cm"
            : "";

    private static Span InYards(Span cubicM) =>
        new(Quantity.Of(cubicM.Low, "m3").In("yd3"), Quantity.Of(cubicM.High, "m3").In("yd3"));

    private static string Range(Span range) =>
        range.Low == range.High
            ? Figures.Of(range.Low, Exact)
            : $"{Figures.Of(range.Low, Exact)} to {Figures.Of(range.High, Exact)}";
}
