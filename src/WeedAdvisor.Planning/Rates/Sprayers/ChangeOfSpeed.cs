using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>
/// At one pressure the volume per area goes inversely with the speed: volume₂ = volume₁ × speed₁ ÷ speed₂.
/// </summary>
internal static class ChangeOfSpeed
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "sprayer",
            "change-of-speed",
            "Change of speed",
            "From a calibrated volume and speed to the volume at another speed, or to the speed for another volume. "
                + "Enter one of the last two.",
            [
                new("volume", "Spray volume now", SprayVolume.Kind(), "From a calibration."),
                new("speed", "Speed now", Pace.Kind(), "The speed of that calibration."),
                new("new-speed", "New speed", Pace.Kind(), "To find the volume at it.") { IsOptional = true },
                new("new-volume", "Volume wanted", SprayVolume.Kind(), "To find the speed for it.")
                {
                    IsOptional = true,
                },
                Pace.Travel,
            ],
            Work
        )
        {
            Example = Field.Example(("volume", "20 gal/acre"), ("speed", "3 mph"), ("new-speed", "4 mph")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        if (inputs.Has("new-speed") == inputs.Has("new-volume"))
            return new RateProblem("new-speed", "enter either the new speed or the volume wanted, one of the two");
        bool isOnFoot = inputs.Word("travel") == Pace.Foot;
        Quantity volume = inputs.Measure("volume"),
            speed = inputs.Measure("speed");
        if (Pace.Doubt(speed, isOnFoot, "speed") is { } doubt)
            return doubt;
        var sheet = new WorkingSheet();
        RateResult result;
        if (inputs.MeasureOrNull("new-speed") is { } wanted)
        {
            if (Pace.Doubt(wanted, isOnFoot, "new-speed") is { } fast)
                return fast;
            Quantity next = sheet.Convert("New speed", wanted, speed.Unit.Symbol);
            Quantity then = sheet.Line(
                "New volume",
                $"{volume} × {speed} ÷ {next}",
                volume * (speed / next).Value,
                volume.Unit.Symbol
            );
            result = SprayVolume.Result(then);
        }
        else
        {
            Quantity goal = sheet.Convert("Volume wanted", inputs.Measure("new-volume"), volume.Unit.Symbol);
            Quantity then = sheet.Line(
                "New speed",
                $"{speed} × {volume} ÷ {goal}",
                speed * (volume / goal).Value,
                speed.Unit.Symbol
            );
            if (Pace.Doubt(then, isOnFoot, "new-volume") is { } fast)
                return fast;
            result = Pace.Result(then, "New speed");
        }

        return new RateAnswer
        {
            Results = [result],
            Working = sheet.Lines,
            Notes = ["Twice as fast is half the volume. Check with a catch before you spray."],
            Assumed = ["Nozzles and pressure stay the same, and no controller changes the pressure with the speed."],
            Cautions = SprayCautions.All,
            Sources = ["ncsu-turf-cal"],
        };
    }
}
