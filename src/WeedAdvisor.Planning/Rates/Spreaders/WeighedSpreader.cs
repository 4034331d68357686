using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Sprayers;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Spreaders;

/// <summary>
/// Rate of a spreader weighed before and after: (before − after) ÷ (length × effective swath × passes).
/// </summary>
internal static class WeighedSpreader
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "spreader",
            "weighed",
            "Spreader weighed before and after",
            "For hand-cranked and push spreaders. Weigh the spreader with granules, spread a measured course at "
                + "working pace, weigh it again.",
            [
                new(
                    "before",
                    "Weight before",
                    Field.Weight(),
                    "Spreader and granules together, or the granules alone."
                ),
                new("after", "Weight after", Field.Weight() with { MayBeZero = true }, "Weighed in the same way."),
                new("course", "Length of the course", Field.Course(), "100 ft or more; a short course weighs badly."),
                new("swath", "Effective swath", Field.Width(), "The distance from pass to pass, not the whole throw."),
                new(
                    "passes",
                    "Passes",
                    new RateFieldKind.Number(1, 100, IsWhole: true),
                    "How often the course was walked, each on fresh ground."
                )
                {
                    Default = "1",
                },
                AgainstWanted.Wanted,
                new("times", "Time of each pass", Field.Time(), "To check the pace.") { IsOptional = true },
                Pace.Travel,
            ],
            Work
        )
        {
            Example = Field.Example(
                ("before", "9.5 lb"),
                ("after", "6 lb"),
                ("course", "125 ft"),
                ("swath", "8 ft"),
                ("wanted", "150 lb/acre"),
                ("times", "31, 33 s")
            ),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity before = inputs.Measure("before"),
            after = inputs.Measure("after"),
            course = inputs.Measure("course");
        if (after.InBase > before.InBase)
            return new RateProblem(
                "after",
                $"{after} after is more than {before} before; a spreader gets lighter, so check both weights"
            );
        if (after.InBase == before.InBase)
            return new RateProblem(
                "after",
                "both weights are the same: nothing was spread, or the scale is too coarse"
            );
        var sheet = new WorkingSheet();
        bool metric = UnitSystem.IsMetric(before);
        ImmutableArray<Quantity> times = inputs.Has("times") ? inputs.List("times") : [];
        ImmutableArray<RateResult> pace = [];
        if (times.Length > 0)
        {
            Quantity speed = Pace.Speed(sheet, course, sheet.Mean("Mean time", times), metric);
            if (Pace.Doubt(speed, inputs.Word("travel") == Pace.Foot, "times") is { } doubt)
                return doubt;
            pace = [Pace.Result(speed)];
        }

        Quantity rest = sheet.Convert("Weight after", after, before.Unit.Symbol);
        Quantity spread = sheet.Line("Granules spread", $"{before} - {rest}", before - rest, before.Unit.Symbol);
        Quantity pass = SprayVolume.Area(sheet, "Area of a pass", course, inputs.Measure("swath"), metric);
        decimal passes = inputs.Number("passes");
        Quantity area =
            passes == 1
                ? pass
                : sheet.Line(
                    "Area of all passes",
                    $"{pass} × {Figures.Of(passes, 3)}",
                    pass * passes,
                    pass.Unit.Symbol
                );
        Quantity rate = GranuleRate.PerArea(sheet, spread, area, metric);
        (ImmutableArray<RateResult> off, ImmutableArray<string> notes) = AgainstWanted.Of(
            sheet,
            rate,
            inputs.MeasureOrNull("wanted")
        );
        return new RateAnswer
        {
            Results = [GranuleRate.Result(rate), .. off, .. pace],
            Working = sheet.Lines,
            Notes = notes,
            Assumed =
            [
                "The swath is the effective one: at work each pass laps over the next as it did when the swath was "
                    + "measured.",
                "Setting, cranking, pace, wind and fill of the hopper are those of the work.",
                .. off.IsEmpty ? (string[])[] : [AgainstWanted.Assumption],
                .. times.IsEmpty ? [] : Pace.Spread(times),
            ],
            Cautions = GranuleRate.Cautions,
            Sources = ["ncsu-onslow", "ncsu-granular", "lsu-rotary", "ncsu-handcrank", "common-practice"],
        };
    }
}
