using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>
/// Spray caught while a strip of known size is covered. Volume per area = volume caught ÷ (course × width). On 1/128 acre
/// (340.3125 ft²) the fluid ounces caught are the gallons per acre, because a gallon holds 128 fluid ounces.
/// </summary>
internal static class TestStrip
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } = new(
        "sprayer",
        "test-strip",
        "Test strip",
        "Mark a strip, time yourself spraying it with water at the usual pace, then catch the spray of that many seconds in a jug.",
        [
            new("caught", "Spray caught", Field.Liquid() with { IsList = true },
                "Catch it in a jug for as long as the strip takes; give every run, or every nozzle's catch of one pass."),
            new("course", "Length of the strip", Field.Course(), "Walk it at the pace at which you will work."),
            new("width", "Width sprayed", Field.Width(), "The width that one pass really covers."),
        ],
        Work)
    {
        Example = Field.Example(("caught", "39, 41, 40 fl-oz"), ("course", "56.7 ft"), ("width", "6 ft")),
    };

    private static RateOutcome Work(RateInputs inputs)
    {
        var sheet = new WorkingSheet();
        Quantity caught = sheet.Mean("Mean of the runs", inputs.List("caught"));
        Quantity course = inputs.Measure("course"), width = inputs.Measure("width");
        Quantity strip = sheet.Line("Area of the strip", $"{course} × {width}", course * width, "ft2");
        Quantity perArea = sheet.Line("Spray per area", $"{caught} ÷ {strip}", caught / strip, "fl-oz/1000ft2");
        return new RateAnswer
        {
            Results = [new("volume-per-area", "Spray volume", perArea.To("gal/acre"), [UnitTable.Of("L/ha")])],
            Working = sheet.Lines,
            Assumed = ["Pace and pressure stay as they were on the strip."],
            Sources = ["lsu-128"],
        };
    }
}
