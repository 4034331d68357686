using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>
/// Volume per area of a nozzle that throws a wide pattern: gal/acre = 495 × gpm ÷ (mph × feet), 495 = 5940 ÷ 12.
/// </summary>
internal static class Boomless
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "sprayer",
            "boomless",
            "Boomless nozzle",
            "Measure the wet width, say how far each pass laps over the last, and catch or look up the flow of the "
                + "nozzle.",
            [
                new(
                    "throw",
                    "Width of the wet ground",
                    Field.Width(),
                    "Spray water on a dry surface in still air and measure from edge to edge."
                ),
                new(
                    "overlap",
                    "Overlap of two passes",
                    Field.Measure("%", "ft", "m") with
                    {
                        MayBeZero = true,
                    },
                    "How much of the width the next pass wets again: a share of the width or a length."
                ),
                new("flow", "Flow of all nozzles", FlowRule.Kind(), "Catch for a time: volume ÷ time."),
                new("speed", "Speed", Pace.Kind(), "Measure it over a course."),
                Pace.Travel with
                {
                    Default = "wheels",
                },
            ],
            Work
        )
        {
            Example = Field.Example(("throw", "18 ft"), ("overlap", "3 ft"), ("flow", "2 gpm"), ("speed", "4 mph")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity speed = inputs.Measure("speed");
        if (Pace.Doubt(speed, inputs.Word("travel") == Pace.Foot, "speed") is { } doubt)
            return doubt;
        var sheet = new WorkingSheet();
        bool metric = UnitSystem.IsMetric(inputs.Measure("flow"));
        (Quantity? swath, RateProblem? problem) = Swath.Effective(
            sheet,
            inputs.Measure("throw"),
            inputs.Measure("overlap"),
            metric
        );
        if (swath is not { } effective)
            return problem!;
        Quantity volume;
        if (metric)
        {
            volume = FlowRule.Volume(sheet, inputs.Measure("flow"), speed, effective, metric: true);
        }
        else
        {
            Quantity flow = sheet.Convert("Flow", inputs.Measure("flow"), "gpm"),
                pace = sheet.Convert("Speed", speed, "mph");
            volume = sheet.Line(
                "Spray volume",
                $"495 × {flow} ÷ ({pace} × {effective})",
                flow / (pace * effective),
                "gal/acre"
            );
        }

        return new RateAnswer
        {
            Results =
            [
                SprayVolume.Result(volume),
                new(
                    "swath",
                    "Effective swath: distance from pass to pass",
                    effective,
                    UnitSystem.Units(metric ? "ft" : "m")
                ),
            ],
            Working = sheet.Lines,
            Notes = ["Drive the passes at the effective swath. Mark them: the eye misjudges them."],
            Assumed =
            [
                "Still air; wind shifts the pattern of a wide throw more than that of a boom.",
                .. Swath.Doubts(effective, inputs.Measure("throw")),
            ],
            Cautions = SprayCautions.All,
            Sources = ["mesa-boom", "common-practice"],
        };
    }
}
