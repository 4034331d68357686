using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>Speed from a timed course: mph = feet × 60 ÷ (seconds × 88), since 1 mph is 88 feet a minute.</summary>
internal static class SpeedOverCourse
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "sprayer",
            "speed",
            "Speed over a course",
            "Mark a course on the ground to be treated. Start before the first mark, with the load on, and time "
                + "yourself from mark to mark.",
            [
                new("course", "Length of the course", Field.Course(), "100 ft or more."),
                new("times", "Time of each run", Field.Time(), "Two runs or more, in both directions."),
                Pace.Travel,
            ],
            Work
        )
        {
            Example = Field.Example(("course", "100 ft"), ("times", "22, 24, 23 s")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        var sheet = new WorkingSheet();
        Quantity course = inputs.Measure("course");
        bool metric = UnitSystem.IsMetric(course);
        ImmutableArray<Quantity> times = inputs.List("times");
        Quantity time = sheet.Mean("Mean time", times);
        Quantity speed = Pace.Speed(sheet, course, time, metric);
        if (Pace.Doubt(speed, inputs.Word("travel") == Pace.Foot, "times") is { } doubt)
            return doubt;
        return new RateAnswer
        {
            Results = [Pace.Result(speed), new("mean-time", "Mean time", time, [])],
            Working = sheet.Lines,
            Notes = ["With a hand-cranked spreader 2 to 3 mph on foot is usual: 100 ft in about 34 to 23 s."],
            Assumed = ["The pace is the same on the whole course.", .. Pace.Spread(times)],
            Cautions = SprayCautions.All,
            Sources = ["ncsu-backpack", "ncsu-granular"],
        };
    }
}
