using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products;

/// <summary>
/// Product for a rate of active ingredient. Dry: active × 100 ÷ percent (handbook-safety). Liquid: active ÷ active in a
/// gallon (mu-g1272).
/// </summary>
internal static class FromActive
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "product",
            "from-active",
            "Product for a rate of active ingredient",
            "Read the strength off the label: a number before a dry code is the percent, before a liquid code the "
                + "pounds in a gallon.",
            [
                new(
                    "active",
                    "Rate of active ingredient",
                    ProductField.ActiveRate(),
                    "From the label or the recommendation."
                ),
                new(
                    "strength",
                    "Strength of the product",
                    ProductField.Strength(),
                    "Percent for dry products; lb/gal or g/L for liquids."
                ),
                new(
                    "basis",
                    "What rate and strength count",
                    Field.Choice(("active", "active ingredient"), ("acid", "acid equivalent")),
                    "Both must count the same; the label says which."
                )
                {
                    Default = "active",
                },
                new(
                    "density",
                    "Weight of the liquid",
                    ProductField.Density(),
                    "Only for a liquid whose strength is in percent; water weighs 8.34 lb/gal."
                )
                {
                    IsOptional = true,
                },
                new("area", "Area to treat", Field.Ground(), "To learn the amount for it.") { IsOptional = true },
            ],
            Work
        )
        {
            Example = Field.Example(("active", "2 lb/acre"), ("strength", "80 %"), ("area", "5000 ft2")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity strength = inputs.Measure("strength");
        Quantity? density = inputs.MeasureOrNull("density");
        if (
            (ProductField.Doubt("strength", strength) ?? ProductField.DoubtDensity("density", density, strength)) is
            { } doubt
        )
            return doubt;
        var sheet = new WorkingSheet();
        Quantity inProduct = ProductField.ByVolume(sheet, strength, density);
        Quantity rate = PerArea(sheet, inputs.Measure("active"), inProduct);
        if (ProductField.DoubtRate("active", rate) is { } absurd)
            return absurd with
            {
                Text = $"this takes {rate} of product, more than can be believed; check rate and strength",
            };
        ImmutableArray<RateResult> results = [ProductResults.PerArea("product-per-area", "Product", rate)];
        if (inputs.MeasureOrNull("area") is { } area)
            results = results.Add(OnArea.Amount(sheet, rate, area, "product", "Product for the area"));
        return new RateAnswer
        {
            Results = results,
            Working = sheet.Lines,
            Assumed =
            [
                inputs.Word("basis") == "acid"
                    ? "Rate and strength both count acid equivalent."
                    : "Rate and strength both count active ingredient, not acid equivalent.",
            ],
            Cautions = ProductCautions.All,
            Sources = ["handbook-safety", "mu-g1272", "uiuc-ae"],
        };
    }

    /// <summary>Product on an area for active ingredient on it, with its lines.</summary>
    /// <param name="sheet">The working.</param>
    /// <param name="active">Active ingredient on an area.</param>
    /// <param name="strength">Percent by weight, or weight in a volume.</param>
    public static Quantity PerArea(WorkingSheet sheet, Quantity active, Quantity strength)
    {
        if (strength.Dimension == Dimension.None)
        {
            string unit = ProductField.IsUs(active) ? "lb/acre" : "kg/ha";
            Quantity dry = sheet.Convert("Active", active, unit);
            return sheet.Line("Product", $"{dry} × 100 % ÷ {strength}", dry / strength, unit);
        }

        bool isUs = ProductField.IsUs(strength);
        Quantity wanted = sheet.Convert("Active", active, isUs ? "lb/acre" : "g/ha");
        Quantity held = sheet.Convert("Strength", strength, isUs ? "lb/gal" : "g/L");
        return sheet.Line("Product", $"{wanted} ÷ {held}", wanted / held, isUs ? "gal/acre" : "L/ha");
    }
}
