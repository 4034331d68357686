using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Sprayers;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Spreaders;

/// <summary>Seconds for a course at a speed: length ÷ speed, 1 mph being 88 feet a minute.</summary>
internal static class WalkingPace
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "spreader",
            "pace",
            "Seconds for a pace",
            "How long a marked course takes at a speed, to practise the pace before calibrating.",
            [
                new("speed", "Speed", Pace.Kind(), "2 to 3 mph is usual with a hand-cranked spreader."),
                new("course", "Length of the course", Field.Course(), "100 ft is easy to mark.") { Default = "100 ft" },
                Pace.Travel,
            ],
            Work
        )
        {
            Example = Field.Example(("speed", "2.5 mph"), ("course", "100 ft")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity speed = inputs.Measure("speed");
        if (Pace.Doubt(speed, inputs.Word("travel") == Pace.Foot, "speed") is { } doubt)
            return doubt;
        var sheet = new WorkingSheet();
        bool metric = UnitSystem.IsMetric(speed);
        Quantity course = sheet.Convert("Length of the course", inputs.Measure("course"), metric ? "m" : "ft");
        Quantity perMinute = sheet.Convert("Way in a minute", speed, metric ? "m/min" : "ft/min");
        Quantity time = sheet.Line("Time", $"{course} ÷ {perMinute} × 60 s in a min", course / perMinute, "s");
        return new RateAnswer
        {
            Results = [new("time", "Time for the course", time, [])],
            Working = sheet.Lines,
            Notes = ["Count your steps in the time; walk it until three runs agree."],
            Assumed = ["You walk at full pace when you pass the first mark."],
            Cautions = GranuleRate.Cautions,
            Sources = ["ncsu-granular"],
        };
    }
}
