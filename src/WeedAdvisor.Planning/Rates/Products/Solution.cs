using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products;

/// <summary>
/// Product for so much finished spray at a concentration. By weight, 1 percent is 10 g in a litre and 1 ppm is 1 mg in
/// a litre (va-dwr); by volume, 1 percent is 10 mL in a litre.
/// </summary>
internal static class Solution
{
    private static readonly Quantity s_whole = Quantity.Of(1000, "g/L");

    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "product",
            "solution",
            "Percent, ppm or dose in water",
            "For labels that give a percent solution, parts per million, or an amount in so much water.",
            [
                new(
                    "wanted",
                    "Concentration wanted",
                    Field.Measure("%", "ppm", "fl-oz/gal", "oz/gal", "lb/100gal", "pt/100gal", "mL/L", "g/L"),
                    "From the label."
                ),
                new(
                    "counts",
                    "What it counts",
                    Field.Choice(("product", "the product as sold"), ("active", "active ingredient")),
                    "The label says which; percent solutions as a rule count the product."
                )
                {
                    Default = "product",
                },
                new(
                    "percent",
                    "Percent by",
                    Field.Choice(
                        ("volume", "volume: 1 % is 10 mL in a litre"),
                        ("weight", "weight: 1 % is 10 g in a litre")
                    ),
                    "Liquids by volume, dry products and actives by weight."
                )
                {
                    Default = "volume",
                },
                new("spray", "Finished spray", Field.Liquid(), "Water and product together."),
                new(
                    "strength",
                    "Strength of the product",
                    ProductField.Strength(),
                    "Needed when the concentration counts active ingredient."
                )
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(("wanted", "2 %"), ("spray", "3 gal")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity wanted = inputs.Measure("wanted"),
            spray = inputs.Measure("spray");
        bool isActive = inputs.Word("counts") == "active";
        bool isByWeight = wanted.Dimension == Dimension.Strength || inputs.Word("percent") == "weight";
        if (Doubt(inputs, wanted, isActive, isByWeight) is { } wrong)
            return wrong;
        var sheet = new WorkingSheet();
        Quantity held =
            isByWeight && wanted.Dimension == Dimension.None
                ? sheet.Line("By weight", $"{wanted} × 10 g/L in 1 %", wanted * s_whole, "g/L")
                : wanted;
        string amountUnit = isByWeight ? "g" : "mL";
        Quantity amount = Poured(sheet, isActive ? "Active" : "Product", held, spray, amountUnit);
        if (isActive)
            amount = Product(sheet, amount, inputs.Measure("strength"));
        return new RateAnswer
        {
            Results =
            [
                ProductResults.Amount("product", "Product", amount),
                .. isActive ? [] : new[] { PerLitre(held) },
            ],
            Working = sheet.Lines,
            Assumed = ["The volume is that of the finished spray: pour the product in and fill up to it."],
            Cautions =
            [
                ProductCautions.Label,
                ProductCautions.NeverUp,
                "A concentration is no rate: how much of it goes on an area still counts. Spray no more than the label "
                    + "says.",
                ProductCautions.Protect,
            ],
            Sources = ["va-dwr", "neveg"],
        };
    }

    private static RateProblem? Doubt(RateInputs inputs, Quantity wanted, bool isActive, bool isByWeight)
    {
        if (wanted.Dimension == Dimension.None ? wanted.InBase >= 1 : wanted.InBase >= s_whole.InBase)
            return new("wanted", $"{wanted} is no solution; the product would be all of the spray");
        if (!isActive)
            return Entered.Wrong(inputs, "a concentration of product", [], ["strength"]);
        if (!isByWeight)
            return new("percent", "active ingredient goes by weight; choose 'weight'");
        return Entered.Wrong(inputs, "a concentration of active ingredient", ["strength"], [])
            ?? ProductField.Doubt("strength", inputs.Measure("strength"))
            ?? (
                inputs.Measure("strength") is { } strength
                && strength.InBase <= wanted.InBase * (strength.Dimension == wanted.Dimension ? 1 : 0)
                    ? new("wanted", $"{wanted} is stronger than the product ({strength})")
                    : null
            );
    }

    private static Quantity Poured(WorkingSheet sheet, string label, Quantity held, Quantity spray, string unit)
    {
        // Pencil sums go in the volume that the concentration is written in.
        Quantity volume = sheet.Convert("Spray", spray, "L");
        Quantity inLitre =
            held.Dimension == Dimension.None ? sheet.Convert(label, held, "mL/L") : sheet.Convert(label, held, "g/L");
        return sheet.Line(label, $"{inLitre} × {volume}", held * spray, unit);
    }

    private static Quantity Product(WorkingSheet sheet, Quantity active, Quantity strength)
    {
        if (strength.Dimension == Dimension.None)
            return sheet.Line("Product", $"{active} × 100 % ÷ {strength}", active / strength, "g");
        Quantity held = sheet.Convert("Strength", strength, "g/L");
        return sheet.Line("Product", $"{active} ÷ {held}", active / held, "mL");
    }

    private static RateResult PerLitre(Quantity held) =>
        held.Dimension == Dimension.None
            ? new("in-water", "In the water", held.To("mL/L"), [UnitTable.Of("fl-oz/gal")])
            : new("in-water", "In the water", held.To("g/L"), [UnitTable.Of("oz/gal")]);
}
