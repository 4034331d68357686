using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Areas;

/// <summary>Surface of the mix in round pots: pi × (width ÷ 2)².</summary>
internal static class PotSurface
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "area",
            "pot-surface",
            "Surface of round pots",
            "Measure across the mix, not the rim: a pot narrows downwards, and a dose by the rim would be too high.",
            [
                new("pot-width", "Width at the mix", AreaField.PotWidth(), "Across the mix through the middle."),
                new("pots", "Pots", AreaField.Pots(), "How many alike.") { Default = "1" },
            ],
            Work
        )
        {
            Example = Field.Example(("pot-width", "6.5 in"), ("pots", "1000")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        var sheet = new WorkingSheet();
        Quantity width = inputs.Measure("pot-width");
        string unit = PotGrid.UnitFor(width);
        Quantity one = PotGrid.Surface(sheet, "Surface of a pot", width, unit);
        decimal pots = inputs.Number("pots");
        string large = unit == "in2" ? "ft2" : "m2";
        Quantity all = sheet.Line("Surface of all", $"{Figures.Of(pots, 6)} × {one}", one * pots, large);
        return new RateAnswer
        {
            Results =
            [
                new(
                    "surface",
                    "Surface of a pot",
                    one,
                    [UnitTable.Of(unit == "in2" ? "cm2" : "in2"), UnitTable.Of("ft2")]
                ),
                AreaField.Result("all", "Surface of all pots", all),
            ],
            Working = sheet.Lines,
            Assumed = ["Pots are round and filled to the same height."],
            Cautions = ["A rate on pots alone counts on this area; a broadcast rate counts on the whole ground."],
            Sources = ["ucanr-area", "ncsu-individual"],
        };
    }
}
