using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products;

/// <summary>Figures of product and active ingredient in the units in which labels, scales and jugs give them.</summary>
internal static class ProductResults
{
    /// <summary>Product or active ingredient on an area.</summary>
    public static RateResult PerArea(string id, string label, Quantity rate)
    {
        string[] units = (rate.Dimension == Dimension.WeightPerArea, ProductField.IsUs(rate)) switch
        {
            (true, true) => ["lb/acre", "oz/acre", "lb/1000ft2", "g/m2", "kg/ha"],
            (true, false) => ["kg/ha", "g/m2", "lb/acre", "lb/1000ft2"],
            (false, true) => ["pt/acre", "qt/acre", "fl-oz/acre", "fl-oz/1000ft2", "mL/1000ft2", "L/ha"],
            (false, false) => ["L/ha", "mL/100m2", "pt/acre", "fl-oz/1000ft2"],
        };
        return Shown(id, label, rate, units);
    }

    /// <summary>Active ingredient on an area.</summary>
    public static RateResult Active(string id, string label, Quantity rate) =>
        ProductField.IsUs(rate)
            ? Shown(id, label, rate, "lb/acre", "kg/ha", "g/ha")
            : Shown(id, label, rate, "kg/ha", "g/ha", "lb/acre");

    /// <summary>A weight or a volume to measure out.</summary>
    public static RateResult Amount(string id, string label, Quantity amount)
    {
        string[] units =
            amount.Dimension == Dimension.Weight
                ? amount.In("lb") < 1
                    ? ["g", "oz"]
                    : ["lb", "kg", "g"]
                : amount.In("gal") < 1
                    ? ["fl-oz", "mL"]
                    : ["gal", "L", "fl-oz"];
        return Shown(id, label, amount, units) with { IsMeasuredOut = true };
    }

    private static RateResult Shown(string id, string label, Quantity value, params string[] units) =>
        new(id, label, value.To(units[0]), [.. units.Skip(1).Select(UnitTable.Of)]);
}

/// <summary>What must be said with every amount of a herbicide.</summary>
internal static class ProductCautions
{
    /// <summary>That the label stands above the sum.</summary>
    public const string Label =
        "The label is the law: its rate, its site and its most in a year stand above this sum. A rate is not a "
        + "permission.";

    /// <summary>That doses are never rounded up.</summary>
    public const string NeverUp =
        "Measure out what the scale or jug shows at or just under the figure; never round a dose up.";

    /// <summary>That the handler is protected.</summary>
    public const string Protect =
        "Wear what the label asks for when you measure and mix as well, not only when you apply.";

    /// <summary>That a broadcast rate counts on ground, a dose on the pot.</summary>
    public const string Ground =
        "A broadcast rate counts on the whole ground covered, gaps between pots included; a dose in a pot counts on "
        + "the pot's surface alone.";

    /// <summary>All of them.</summary>
    public static ImmutableArray<string> All { get; } = [Label, NeverUp, Ground, Protect];
}
