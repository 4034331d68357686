using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>
/// Spray caught while a strip or plot of known size is covered. Volume per area = volume caught ÷ (length × width). On
/// 1/128 acre (340.3125 ft²) the fluid ounces caught are the gallons per acre, because a gallon holds 128 fluid ounces.
/// </summary>
internal static class TestStrip
{
    private const string Handgun = "handgun";

    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "sprayer",
            "test-strip",
            "Test strip or plot",
            "Mark a strip (backpack, boom) or a plot such as 18.5 ft × 18.5 ft (handgun). Time yourself spraying it "
                + "with water "
                + "at the usual pace. Then catch the spray of that many seconds in a jug.",
            [
                new(
                    "caught",
                    "Spray caught",
                    Field.Liquid() with
                    {
                        IsList = true,
                    },
                    "Catch it in a jug for as long as the strip takes; give every run, or every nozzle's catch of one "
                        + "pass."
                ),
                new(
                    "course",
                    "Length of the strip or plot",
                    Field.Course(),
                    "Walk it at the pace at which you will work."
                ),
                new(
                    "width",
                    "Width sprayed",
                    Field.Width(),
                    "The width that the spray in the jug covers: the whole pass, or the nozzle spacing when one nozzle "
                        + "was caught."
                ),
                new(
                    "times",
                    "Time for the strip",
                    Field.Time(),
                    "Seconds of each run; needed only to check the pace or to scale the catch."
                )
                {
                    IsOptional = true,
                },
                new(
                    "catch-time",
                    "Time the jug was held",
                    Field.Time() with
                    {
                        IsList = false,
                    },
                    "Only when it was another time than the strip takes, such as one minute."
                )
                {
                    IsOptional = true,
                },
                new(
                    "sprayer",
                    "Kind of sprayer",
                    Field.Choice(
                        ("backpack", "Backpack or hand boom, on foot"),
                        (Handgun, "Handgun or wand, waved over a plot"),
                        ("wheels", "Boom on wheels")
                    ),
                    "It decides which speed is believed."
                )
                {
                    Default = "backpack",
                },
            ],
            Work
        )
        {
            Example = Field.Example(
                ("caught", "39, 41, 40 fl-oz"),
                ("course", "56.7 ft"),
                ("width", "6 ft"),
                ("times", "16, 18 s")
            ),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        if (inputs.Has("catch-time") && !inputs.Has("times"))
            return new RateProblem(
                "times",
                "not entered: the time for the strip, which is needed to scale what was caught in another time"
            );
        var sheet = new WorkingSheet();
        ImmutableArray<Quantity> times = inputs.Has("times") ? inputs.List("times") : [];
        Quantity caught = sheet.Mean("Mean of the catches", inputs.List("caught"));
        bool metric = UnitSystem.IsMetric(caught);
        RateResult? speed = null;
        if (times.Length > 0)
        {
            Quantity time = sheet.Mean("Mean time of the runs", times);
            if (inputs.MeasureOrNull("catch-time") is { } held)
                caught = sheet.Line(
                    "Spray in the time of the strip",
                    $"{caught} × {time} ÷ {held}",
                    caught * (time / held).Value,
                    caught.Unit.Symbol
                );
            if (inputs.Word("sprayer") != Handgun)
            {
                Quantity pace = Pace.Speed(sheet, inputs.Measure("course"), time, metric);
                if (Pace.Doubt(pace, inputs.Word("sprayer") == "backpack", "times") is { } doubt)
                    return doubt;
                speed = Pace.Result(pace, "Speed on the strip");
            }
        }

        Quantity strip = SprayVolume.Area(
            sheet,
            "Area sprayed",
            inputs.Measure("course"),
            inputs.Measure("width"),
            metric
        );
        Quantity volume = SprayVolume.PerArea(sheet, caught, strip, metric);
        return new RateAnswer
        {
            Results = speed is null ? [SprayVolume.Result(volume)] : [SprayVolume.Result(volume), speed],
            Working = sheet.Lines,
            Assumed =
            [
                "Pace, pressure and nozzle stay as they were in the test.",
                .. times.IsEmpty ? [] : Pace.Spread(times),
            ],
            Cautions = SprayCautions.All,
            Sources = ["lsu-128", "ncsu-backpack", "mesa-handgun"],
        };
    }
}
