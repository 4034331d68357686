using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products;

/// <summary>
/// Active ingredient in an amount or a rate of product: product × strength (handbook-safety, mu-g1272).
/// </summary>
internal static class ToActive
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "product",
            "to-active",
            "Active ingredient in product",
            "How much active ingredient a rate or an amount of product brings, to hold it against a most in a year.",
            [
                new(
                    "product",
                    "Product",
                    ProductRateOrAmount(),
                    "On an area, such as 150 lb/acre, or an amount, such as 30 lb."
                ),
                new(
                    "strength",
                    "Strength of the product",
                    ProductField.Strength(),
                    "Percent for dry products; lb/gal or g/L for liquids."
                ),
                new(
                    "density",
                    "Weight of the liquid",
                    ProductField.Density(),
                    "Only for a liquid whose strength is in percent; water weighs 8.34 lb/gal."
                )
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(("product", "150 lb/acre"), ("strength", "4 %")),
        };

    private static RateFieldKind.Measure ProductRateOrAmount() =>
        Field.Measure("lb/acre", "pt/acre", "fl-oz/acre", "kg/ha", "L/ha", "lb", "g", "fl-oz", "mL", "gal");

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity product = inputs.Measure("product"),
            strength = inputs.Measure("strength");
        Quantity? density = inputs.MeasureOrNull("density");
        RateProblem? doubt = ProductField.Doubt("strength", strength)
            ?? ProductField.DoubtDensity("density", density, strength)
            ?? ProductField.DoubtRate("product", product)
            ?? Mismatch(product, strength, density);
        if (doubt is not null)
            return doubt;
        var sheet = new WorkingSheet();
        Quantity active = Active(sheet, product, ProductField.ByVolume(sheet, strength, density));
        bool isRate = active.Dimension == Dimension.WeightPerArea;
        return new RateAnswer
        {
            Results =
            [
                isRate
                    ? ProductResults.Active("active", "Active ingredient", active)
                    : new(
                        "active",
                        "Active ingredient",
                        active,
                        [UnitTable.Of(active.Unit.Symbol == "lb" ? "kg" : "lb")]
                    ),
            ],
            Working = sheet.Lines,
            Assumed = ["The strength counts what the label counts: active ingredient or acid equivalent."],
            Cautions = [ProductCautions.Label],
            Sources = ["handbook-safety", "mu-g1272"],
        };
    }

    /// <summary>Active ingredient in product, with its lines.</summary>
    /// <param name="sheet">The working.</param>
    /// <param name="product">Product, dry or liquid, on an area or not, fit for the strength.</param>
    /// <param name="strength">Percent for a weight; weight in a volume for a volume.</param>
    /// <param name="label">What is worked out.</param>
    public static Quantity Active(WorkingSheet sheet, Quantity product, Quantity strength, string label = "Active")
    {
        bool isRate = product.Dimension == Dimension.WeightPerArea || product.Dimension == Dimension.VolumePerArea;
        if (strength.Dimension == Dimension.None)
        {
            string unit = product.Unit.Symbol;
            return sheet.Line(label, $"{product} × {strength} ÷ 100 %", product * strength, unit);
        }

        bool isUs = ProductField.IsUs(strength);
        string volume = isUs ? "gal" : "L",
            weight = isUs ? "lb" : "g",
            per = !isRate ? ""
            : isUs ? "/acre"
            : "/ha";
        Quantity held = sheet.Convert("Strength", strength, $"{weight}/{volume}");
        Quantity poured = sheet.Convert("Product", product, volume + per);
        return sheet.Line(label, $"{poured} × {held}", product * strength, weight + per);
    }

    private static RateProblem? Mismatch(Quantity product, Quantity strength, Quantity? density)
    {
        bool isWeight = product.Dimension == Dimension.WeightPerArea || product.Dimension == Dimension.Weight;
        bool isByWeight = strength.Dimension == Dimension.None && density is null;
        return (isWeight, isByWeight) switch
        {
            (true, false) => new("strength", $"{product} is a weight; its strength must be in %"),
            (false, true) => new(
                "density",
                $"{product} is a volume and its strength is in %; the weight of the liquid is needed"
            ),
            _ => null,
        };
    }
}
