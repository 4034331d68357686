using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Spreaders;

/// <summary>The wanted rate in several lighter doses that cross each other: rate of each = rate ÷ doses.</summary>
internal static class CrossingPasses
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "spreader",
            "crossing-passes",
            "Half the rate, twice, crossing",
            "Set the spreader to a part of the rate and go over the bed several times, each time at right angles to "
                + "the last. Gaps of one "
                + "dose are met by the next.",
            [
                new("wanted", "Whole rate wanted", GranuleRate.Kind(), "Weight of product on an area, from the label."),
                new("area", "Area to treat", Field.Ground(), "The bed or block."),
                new("doses", "Doses", new RateFieldKind.Number(2, 8, IsWhole: true), "2 is usual.") { Default = "2" },
            ],
            Work
        )
        {
            Example = Field.Example(("wanted", "150 lb/acre"), ("area", "2000 ft2"), ("doses", "2")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        var sheet = new WorkingSheet();
        Quantity wanted = inputs.Measure("wanted");
        decimal doses = inputs.Number("doses");
        bool metric = UnitSystem.IsMetric(wanted);
        Quantity whole = TestWeight.Of(sheet, wanted, inputs.Measure("area"), metric);
        Quantity each = sheet.Line(
            "Granules of a dose",
            $"{whole} ÷ {Figures.Of(doses, 2)}",
            whole / doses,
            whole.Unit.Symbol
        );
        Quantity rate = sheet.Line(
            "Rate of a dose",
            $"{wanted} ÷ {Figures.Of(doses, 2)}",
            wanted / doses,
            wanted.Unit.Symbol
        );
        return new RateAnswer
        {
            Results =
            [
                GranuleRate.Result(
                    rate.To(metric ? "kg/ha" : "lb/acre"),
                    "rate-of-a-dose",
                    "Rate to set the spreader to"
                ),
                GranuleRate.Weighed("dose", "Granules for a dose", each, metric),
                GranuleRate.Weighed("whole", "Granules for all doses", whole, metric),
            ],
            Working = sheet.Lines,
            Notes =
            [
                "Weigh out each dose by itself and fill only that: what is left or lacking at the end shows the error.",
                "Go over the bed lengthwise with the first dose and crosswise with the next.",
            ],
            Assumed = ["All doses go on the same day, and together are one application on the label."],
            Cautions = GranuleRate.Cautions,
            Sources = ["common-practice"],
        };
    }
}
