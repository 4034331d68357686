using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Spreaders;

/// <summary>Holds a rate found against the rate wanted: (found − wanted) ÷ wanted.</summary>
internal static class CompareRates
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "spreader",
            "compare",
            "Rate found and rate wanted",
            "How far a calibration is off the label's rate, and what to change next.",
            [
                new("found", "Rate found", GranuleRate.Kind(), "From a calibration."),
                new("wanted", "Rate wanted", GranuleRate.Kind(), "From the label, in any unit of weight on an area."),
            ],
            Work
        )
        {
            Example = Field.Example(("found", "3.9 lb/1000ft2"), ("wanted", "150 lb/acre")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        var sheet = new WorkingSheet();
        bool metric = UnitSystem.IsMetric(inputs.Measure("found"));
        Quantity found = sheet.Convert("Rate found", inputs.Measure("found"), metric ? "kg/ha" : "lb/acre");
        (ImmutableArray<RateResult> off, ImmutableArray<string> notes) = AgainstWanted.Of(
            sheet,
            found,
            inputs.Measure("wanted")
        );
        return new RateAnswer
        {
            Results = [.. off, GranuleRate.Result(found, label: "Rate found")],
            Working = sheet.Lines,
            Notes = notes,
            Assumed = [AgainstWanted.Assumption],
            Cautions = GranuleRate.Cautions,
            Sources = ["common-practice"],
        };
    }
}
