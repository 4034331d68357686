using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Spreaders;

/// <summary>
/// Length of a course for a round area: 1000 ft² ÷ swath; and the granules that should be gone at its end.
/// </summary>
internal static class SpreaderCourse
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "spreader",
            "course",
            "Course for 1000 square feet",
            "How far to walk so that the pass covers a round area, and how much should have left the spreader when you "
                + "get there.",
            [
                new("swath", "Effective swath", Field.Width(), "The distance from pass to pass."),
                new("area", "Area of the test", Field.Ground(), "1000 ft2 is usual; 100 m2 in metric.")
                {
                    Default = "1000 ft2",
                },
                new("wanted", "Rate wanted", GranuleRate.Kind(), "Weight of product on an area, from the label.")
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(("swath", "8 ft"), ("wanted", "150 lb/acre")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        var sheet = new WorkingSheet();
        bool metric = UnitSystem.IsMetric(inputs.Measure("swath"));
        Quantity area = sheet.Convert("Area of the test", inputs.Measure("area"), metric ? "m2" : "ft2");
        Quantity swath = sheet.Convert("Effective swath", inputs.Measure("swath"), metric ? "m" : "ft");
        if (swath.Value * swath.Value > area.Value * 4)
            return new RateProblem(
                "area",
                $"a course of this area would be shorter than a quarter of the swath of {swath}; test a larger area"
            );
        Quantity length = sheet.Line("Length of the course", $"{area} ÷ {swath}", area / swath, metric ? "m" : "ft");
        ImmutableArray<RateResult>.Builder results = ImmutableArray.CreateBuilder<RateResult>();
        results.Add(new("course", "Length of the course", length, UnitSystem.Units(metric ? "ft" : "m")));
        if (inputs.MeasureOrNull("wanted") is { } wanted)
            results.Add(
                GranuleRate.Weighed(
                    "weight",
                    "Granules for the course",
                    TestWeight.Of(sheet, wanted, area, metric),
                    metric
                )
            );
        return new RateAnswer
        {
            Results = results.ToImmutable(),
            Working = sheet.Lines,
            Notes = ["Start to walk and crank before the first mark, open the gate at it and close it at the last."],
            Assumed = ["One pass, at the effective swath."],
            Cautions = GranuleRate.Cautions,
            Sources = ["ncsu-onslow"],
        };
    }
}
