using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>Volume per area = output of a minute ÷ (way walked in a minute × swath).</summary>
internal static class MinuteWalk
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "sprayer",
            "minute",
            "A minute's walk and a minute's spray",
            "Walk for one minute at working pace and measure how far you came. Then spray for one minute into a jug.",
            [
                new(
                    "caught",
                    "Spray of a minute",
                    Field.Liquid() with
                    {
                        IsList = true,
                    },
                    "Several catches are better than one."
                ),
                new(
                    "walked",
                    "Way walked in a minute",
                    Field.Course() with
                    {
                        IsList = true,
                    },
                    "Several walks are better than one."
                ),
                new("swath", "Width sprayed", Field.Width(), "The width of one pass at working height."),
            ],
            Work
        )
        {
            Example = Field.Example(("caught", "1.05, 1, 0.98 L"), ("walked", "45, 47 m"), ("swath", "0.6 m")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        var sheet = new WorkingSheet();
        Quantity minute = Quantity.Of(1, "min");
        ImmutableArray<Quantity> walks = inputs.List("walked");
        Quantity caught = sheet.Mean("Mean catch", inputs.List("caught")),
            walked = sheet.Mean("Mean way", walks);
        bool metric = UnitSystem.IsMetric(caught);
        if (Pace.Doubt((walked / minute).To("mph"), isOnFoot: true, "walked") is { } doubt)
            return doubt;
        Quantity ground = SprayVolume.Area(sheet, "Ground in a minute", walked, inputs.Measure("swath"), metric);
        Quantity volume = SprayVolume.PerArea(sheet, caught, ground, metric);
        return new RateAnswer
        {
            Results =
            [
                SprayVolume.Result(volume),
                new("ground", "Ground sprayed in a minute", ground, UnitSystem.Units(metric ? "ft2" : "m2")),
                Pace.Result((walked / minute).To(metric ? "km/h" : "mph"), "Walking speed"),
            ],
            Working = sheet.Lines,
            Assumed = ["Pace and pumping are the same with a jug and in the crop.", .. Pace.Spread(walks)],
            Cautions = SprayCautions.All,
            Sources = ["common-practice"],
        };
    }
}
