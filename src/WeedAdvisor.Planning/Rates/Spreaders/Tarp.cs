using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Sprayers;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Spreaders;

/// <summary>
/// Rate from what falls on a tarp, in a pan, or in the catch pan under a drop spreader: weight ÷ (length × width).
/// </summary>
internal static class Tarp
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "spreader",
            "tarp",
            "Granules caught on a tarp or in a pan",
            "Spread over a tarp such as 10 ft × 10 ft, or hang a pan under a drop spreader and push it over a course. "
                + "Weigh what was caught.",
            [
                new(
                    "caught",
                    "Granules caught",
                    Field.Weight() with
                    {
                        IsList = true,
                    },
                    "Without the tarp or pan; give every run."
                ),
                new(
                    "length",
                    "Length of the tarp or course",
                    Field.Course(),
                    "With a pan under a drop spreader: the course pushed."
                ),
                new(
                    "width",
                    "Width of the tarp or spreader",
                    Field.Width(),
                    "With a drop spreader: the width over its openings."
                ),
                new(
                    "runs",
                    "Passes in one catch",
                    new RateFieldKind.Number(1, 100, IsWhole: true),
                    "How often the same ground or course was gone over before weighing."
                )
                {
                    Default = "1",
                },
                AgainstWanted.Wanted,
            ],
            Work
        )
        {
            Example = Field.Example(
                ("caught", "5.4, 5.6 oz"),
                ("length", "10 ft"),
                ("width", "10 ft"),
                ("wanted", "150 lb/acre")
            ),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        var sheet = new WorkingSheet();
        Quantity caught = sheet.Mean("Mean of the runs", inputs.List("caught"));
        bool metric = UnitSystem.IsMetric(caught);
        decimal runs = inputs.Number("runs");
        Quantity once =
            runs == 1
                ? caught
                : sheet.Line("Of one pass", $"{caught} ÷ {Figures.Of(runs, 3)}", caught / runs, caught.Unit.Symbol);
        Quantity area = SprayVolume.Area(sheet, "Area", inputs.Measure("length"), inputs.Measure("width"), metric);
        Quantity rate = GranuleRate.PerArea(sheet, once, area, metric);
        (ImmutableArray<RateResult> off, ImmutableArray<string> notes) = AgainstWanted.Of(
            sheet,
            rate,
            inputs.MeasureOrNull("wanted")
        );
        return new RateAnswer
        {
            Results = [GranuleRate.Result(rate), .. off],
            Working = sheet.Lines,
            Notes = notes,
            Assumed =
            [
                "The tarp got what the ground gets at work, with the passes that lap over it on both sides.",
                "The rate is that of one pass.",
                .. off.IsEmpty ? (string[])[] : [AgainstWanted.Assumption],
            ],
            Cautions = GranuleRate.Cautions,
            Sources = ["ncsu-onslow", "common-practice"],
        };
    }
}
