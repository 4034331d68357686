using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>Spray used on a small area as a volume on an acre or hectare: an acre is 43.56 times 1000 ft².</summary>
internal static class SprayOnArea
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "sprayer",
            "spray-on-area",
            "Spray used on an area",
            "Fill to a mark, spray an area that you have measured with water, and measure what refills the tank to the "
                + "mark.",
            [
                new(
                    "spray",
                    "Spray used",
                    Field.Liquid() with
                    {
                        IsList = true,
                    },
                    "What it takes to refill; give every run."
                ),
                new("area", "Area sprayed", Field.Ground(), "Measured, not paced.") { Default = "1000 ft2" },
            ],
            Work
        )
        {
            Example = Field.Example(("spray", "1.5 gal"), ("area", "1000 ft2")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        var sheet = new WorkingSheet();
        Quantity spray = sheet.Mean("Mean of the runs", inputs.List("spray"));
        Quantity volume = SprayVolume.PerArea(sheet, spray, inputs.Measure("area"), UnitSystem.IsMetric(spray));
        return new RateAnswer
        {
            Results = [SprayVolume.Result(volume)],
            Working = sheet.Lines,
            Assumed = ["The tank stood level at both fillings."],
            Cautions = SprayCautions.All,
            Sources = ["nsw-knapsack"],
        };
    }
}
