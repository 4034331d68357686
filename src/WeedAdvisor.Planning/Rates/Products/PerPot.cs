using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Areas;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products;

/// <summary>Dose for one pot: rate × surface of the pot (ncsu-individual).</summary>
internal static class PerPot
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "product",
            "per-pot",
            "Dose for one pot",
            "For granules shaken into single pots. Weigh one dose, mark a spoon or jar with it, and shake it on in at "
                + "least four passes.",
            [
                new("rate", "Rate of product", ProductField.ProductRate(), "From the label, for this use."),
                new("pot-width", "Width at the mix", AreaField.PotWidth(), "Across the mix, not the rim."),
                new("pots", "Pots", AreaField.Pots(), "To learn how much to fetch.") { Default = "1" },
                new("most", "Highest rate of the label", ProductField.ProductRate(), "To hold the rate against.")
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(("rate", "150 lb/acre"), ("pot-width", "10 in"), ("pots", "200")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity rate = inputs.Measure("rate"),
            width = inputs.Measure("pot-width");
        if ((ProductField.DoubtRate("rate", rate) ?? OnArea.AboveMost(inputs)) is { } wrong)
            return wrong;
        var sheet = new WorkingSheet();
        bool isMetric = PotGrid.UnitFor(width) == "cm2";
        Quantity surface = PotGrid.Surface(sheet, "Surface of a pot", width, isMetric ? "cm2" : "in2");
        surface = sheet.Convert("Surface of a pot", surface, isMetric ? "m2" : "ft2");
        bool isDry = rate.Dimension == Dimension.WeightPerArea;
        Quantity onGround = sheet.Convert("Rate", rate, (isDry ? "g" : "mL") + (isMetric ? "/m2" : "/ft2"));
        Quantity dose = sheet.Line(
            "Dose for one pot",
            $"{onGround} × {surface}",
            onGround * surface,
            isDry ? "g" : "mL"
        );
        decimal pots = inputs.Number("pots");
        Quantity all =
            pots == 1 ? dose : sheet.Line("All pots", $"{Figures.Of(pots, 6)} × {dose}", dose * pots, dose.Unit.Symbol);
        return new RateAnswer
        {
            Results =
            [
                ProductResults.Amount("dose", "Dose for one pot", dose),
                .. pots == 1 ? [] : new[] { ProductResults.Amount("all", "Product for all pots", all) },
            ],
            Working = sheet.Lines,
            Assumed = ["The pot is round; the dose lies evenly over its mix."],
            Cautions = ProductCautions.All,
            Sources = ["ncsu-individual"],
        };
    }
}
