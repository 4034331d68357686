using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>
/// Length of a course that makes the jug show the spray volume: 1/128 acre = 43 560 ÷ 128 = 340.3125 ft², where fluid
/// ounces are gallons per acre; or 1/1000 ha = 10 m², where millilitres are litres per hectare.
/// </summary>
internal static class TestCourse
{
    private const string Acre = "acre-128th";

    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "sprayer",
            "test-course",
            "Course on which the jug shows the rate",
            "Mark a course of this length, time yourself spraying it, then catch the spray of that many seconds. On "
                + "1/128 acre the "
                + "fluid ounces in the jug are the gallons per acre; on 1/1000 hectare the millilitres are the litres "
                + "per hectare.",
            [
                new(
                    "width",
                    "Width sprayed",
                    Field.Width(),
                    "The width of one pass; nozzle spacing when one nozzle of a boom is caught; row width when all "
                        + "nozzles of a row are."
                ),
                new(
                    "of",
                    "Size of the course",
                    Field.Choice(
                        (Acre, "1/128 acre: fluid ounces are gallons per acre"),
                        ("ha-1000th", "1/1000 hectare: millilitres are litres per hectare")
                    ),
                    "Take the one for which you have a jug."
                )
                {
                    Default = Acre,
                },
                new(
                    "plant-spacing",
                    "Plant spacing in the row",
                    Field.Width(),
                    "To count plants instead of measuring: the distance from plant to plant."
                )
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(("width", "6 ft"), ("plant-spacing", "5 ft")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        var sheet = new WorkingSheet();
        bool acre = inputs.Word("of") == Acre;
        string unit = acre ? "ft" : "m";
        Quantity area = acre
            ? sheet.Line(
                "1/128 acre",
                "43560 ft2 in an acre ÷ 128 fl-oz in a gal",
                Quantity.Of(43560, "ft2") / 128,
                "ft2"
            )
            : sheet.Line("1/1000 hectare", "10000 m2 in a ha ÷ 1000 mL in a L", Quantity.Of(10000, "m2") / 1000, "m2");
        Quantity width = sheet.Convert("Width", inputs.Measure("width"), unit);
        Quantity length = sheet.Line("Length of the course", $"{area} ÷ {width}", area / width, unit);
        ImmutableArray<RateResult>.Builder results = ImmutableArray.CreateBuilder<RateResult>();
        results.Add(new("course", "Length of the course", length, UnitSystem.Units(acre ? "m" : "ft")));
        if (inputs.MeasureOrNull("plant-spacing") is { } spacing)
        {
            Quantity apart = sheet.Convert("Plant spacing", spacing, unit);
            decimal plants = sheet.Line("Plants on the course", $"{length} ÷ {apart}", (length / apart).Value);
            results.Add(new("plants", "Plants on the course, whole ones", Quantity.Number(decimal.Floor(plants)), []));
        }

        return new RateAnswer
        {
            Results = results.ToImmutable(),
            Working = sheet.Lines,
            Notes =
            [
                acre
                    ? "Fluid ounces caught in the time of this course are gallons per acre."
                    : "Millilitres caught in the time of this course are litres per hectare.",
                acre
                    ? "For a handgun mark a square of 18.45 ft a side: the square root of 340.3125 ft2. In the field "
                        + "18.5 ft is near enough."
                    : "For a handgun mark 10 m2, such as 2 m × 5 m.",
            ],
            Assumed = acre ? ["Printed tables often take 340 ft2; this takes 340.3125 ft2."] : [],
            Cautions = SprayCautions.All,
            Sources = acre ? ["lsu-128", "osu-b817", "ncsu-backpack"] : ["nsw-knapsack"],
        };
    }
}
