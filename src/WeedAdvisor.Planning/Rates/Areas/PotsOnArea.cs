using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Areas;

/// <summary>How many pots an area takes at a spacing, or the area that pots need (gpn-spacing).</summary>
internal static class PotsOnArea
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "area",
            "pots",
            "Pots on an area",
            "Enter the area to learn how many pots it takes, or the pots to learn what area they need. Leave aisles "
                + "out of the area.",
            [
                new(
                    "spacing",
                    "Spacing",
                    AreaField.Spacing(),
                    "From the middle of a pot to the middle of the next in its row."
                ),
                new("pattern", "Rows", PotGrid.Pattern(), "Staggered rows take about 15 in 100 pots more.")
                {
                    Default = "square",
                },
                new("area", "Area", Field.Ground(), "The ground on which pots stand.") { IsOptional = true },
                new("pots", "Pots", AreaField.Pots(), "How many have to stand.") { IsOptional = true },
                new("pot-width", "Width of a pot", AreaField.PotWidth(), "At its widest, to check that the pots fit.")
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(("spacing", "10 in"), ("area", "600 ft2"), ("pot-width", "6.5 in")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity spacing = inputs.Measure("spacing");
        RateProblem? wrong = Entered.NotOne(inputs, "area", "pots")
            ?? (inputs.MeasureOrNull("pot-width") is { } width ? PotGrid.TooWide(width, spacing) : null);
        if (wrong is not null)
            return wrong;
        var sheet = new WorkingSheet();
        string unit = PotGrid.UnitFor(spacing);
        Quantity one = PotGrid.Ground(sheet, spacing, inputs.Word("pattern"), unit);
        string per = unit == "in2" ? "pot/100ft2" : "pot/m2";
        Quantity stand = new Quantity(1, UnitTable.Of("pot")) / one;
        return new RateAnswer
        {
            Results =
            [
                inputs.Has("area")
                    ? Count(sheet, inputs.Measure("area"), one)
                    : Needed(sheet, inputs.Number("pots"), one),
                new(
                    "density",
                    "Pots on the ground",
                    stand.To(per),
                    [UnitTable.Of(unit == "in2" ? "pot/m2" : "pot/100ft2")]
                ),
                new("ground-for-one", "Ground for one pot", one, [UnitTable.Of(unit == "in2" ? "cm2" : "in2")]),
            ],
            Working = sheet.Lines,
            Assumed = ["The bed is large: on a narrow one the last row and the ends change the count."],
            Sources = ["gpn-spacing"],
        };
    }

    private static RateResult Count(WorkingSheet sheet, Quantity area, Quantity one)
    {
        Quantity ground = sheet.Convert("Area", area, one.Unit.Symbol);
        decimal pots = sheet.Line("Pots", $"{ground} ÷ {one} a pot", (ground / one).Value);
        return new("pots", "Whole pots", Quantity.Of(Math.Floor(Math.Round(pots, 9)), "pot"), []);
    }

    private static RateResult Needed(WorkingSheet sheet, decimal pots, Quantity one)
    {
        string unit = one.Unit.Symbol == "in2" ? "ft2" : "m2";
        Quantity area = sheet.Line("Area", $"{Figures.Of(pots, 6)} pots × {one}", one * pots, unit);
        return AreaField.Result("area", "Area without aisles", area);
    }
}
