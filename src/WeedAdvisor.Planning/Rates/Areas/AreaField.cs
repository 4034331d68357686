using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Areas;

/// <summary>Fields and figures that the sums about areas and pots share.</summary>
internal static class AreaField
{
    /// <summary>The side of a bed, bench or house.</summary>
    public static RateFieldKind.Measure Side() =>
        Field.Measure("ft", "m", "in", "cm") with
        {
            Least = Quantity.Of(1, "in"),
            Most = Quantity.Of(2, "km"),
        };

    /// <summary>The width of a round pot where the mix ends.</summary>
    public static RateFieldKind.Measure PotWidth() =>
        Field.Measure("in", "cm", "mm") with
        {
            Least = Quantity.Of(1, "cm"),
            Most = Quantity.Of(3, "m"),
        };

    /// <summary>The way from the middle of a pot to the middle of the next.</summary>
    public static RateFieldKind.Measure Spacing() =>
        Field.Measure("in", "cm", "ft", "m") with
        {
            Least = Quantity.Of(1, "cm"),
            Most = Quantity.Of(10, "m"),
        };

    /// <summary>A number of pots.</summary>
    public static RateFieldKind.Number Pots() => new(1, 10_000_000, IsWhole: true);

    /// <summary>
    /// An area as a figure of the answer: square feet and square metres, with acres and hectares when large.
    /// </summary>
    public static RateResult Result(string id, string label, Quantity area) =>
        area.In("acre") >= 0.5m
            ? new(id, label, area.To("acre"), [UnitTable.Of("ft2"), UnitTable.Of("ha"), UnitTable.Of("m2")])
            : new(id, label, area.To("ft2"), [UnitTable.Of("m2")]);
}
