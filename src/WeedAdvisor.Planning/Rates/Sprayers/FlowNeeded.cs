using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>Flow that a nozzle must give for a wanted volume: gpm = gal/acre × mph × inches ÷ 5940.</summary>
internal static class FlowNeeded
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "sprayer",
            "flow-needed",
            "Flow needed for a volume",
            "Tells the flow of the nozzle to fit, or what the jug must show in the time you choose, for the volume "
                + "that the label asks for.",
            [
                new("volume", "Spray volume wanted", SprayVolume.Kind(), "The label names it, often as a range."),
                new("speed", "Speed", Pace.Kind(), "Measure it over a course on the ground to be sprayed."),
                new(
                    "width",
                    "Width for a nozzle",
                    Field.Width(),
                    "Nozzle spacing; for one nozzle alone, the whole width that it covers."
                ),
                new(
                    "time",
                    "Time of the catch",
                    Field.Time() with
                    {
                        IsList = false,
                    },
                    "How long you will hold the jug."
                )
                {
                    Default = "60 s",
                },
                Pace.Travel,
            ],
            Work
        )
        {
            Example = Field.Example(("volume", "40 gal/acre"), ("speed", "3 mph"), ("width", "20 in")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity speed = inputs.Measure("speed"),
            time = inputs.Measure("time");
        if (Pace.Doubt(speed, inputs.Word("travel") == Pace.Foot, "speed") is { } doubt)
            return doubt;
        var sheet = new WorkingSheet();
        bool metric = UnitSystem.IsMetric(inputs.Measure("volume"));
        Quantity flow = FlowRule.Flow(sheet, inputs.Measure("volume"), speed, inputs.Measure("width"), metric);
        Quantity minutes = sheet.Convert("Time in minutes", time, "min");
        Quantity inJug = metric
            ? sheet.Line("In the jug", $"{flow} × {minutes} × 1000 mL in a L", flow * minutes, "mL")
            : sheet.Line("In the jug", $"{flow} × {minutes} × 128 fl-oz in a gal", flow * minutes, "fl-oz");
        return new RateAnswer
        {
            Results =
            [
                FlowRule.Result(flow, "flow", "Flow of a nozzle"),
                new(
                    "catch",
                    $"In the jug after {time}",
                    inJug,
                    UnitSystem.Units(metric ? "fl-oz" : "mL"),
                    IsMeasuredOut: true
                ),
            ],
            Working = sheet.Lines,
            Notes =
            [
                "Choose the nozzle that gives this flow in the middle of its pressure range, then catch it and check.",
            ],
            Assumed = ["The speed is kept."],
            Cautions = SprayCautions.All,
            Sources = ["mu-g1270a"],
        };
    }
}
