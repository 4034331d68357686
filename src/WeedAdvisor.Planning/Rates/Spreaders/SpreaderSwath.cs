using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Sprayers;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Spreaders;

/// <summary>
/// Effective swath of a rotary spreader = throw × (1 − overlap on one side). A hand-cranked one wants an overlap of 30
/// to 35 % on each side, 60 to 70 % in all (NC State, AG-826).
/// </summary>
internal static class SpreaderSwath
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "spreader",
            "swath",
            "Throw and effective swath",
            "A rotary spreader throws most in front of the walker and less at the sides, so the passes must lap over "
                + "each other.",
            [
                new(
                    "throw",
                    "Whole width thrown",
                    Field.Width(),
                    "From the outermost granules on one side to those on the other."
                ),
                new(
                    "overlap",
                    "Overlap on each side",
                    Field.Measure("%", "ft", "m") with
                    {
                        MayBeZero = true,
                    },
                    "30 to 35 % of the throw on each side with a hand-cranked spreader."
                )
                {
                    Default = "33 %",
                },
                new("bed", "Width of the bed or block", Field.Course(), "To count the passes.") { IsOptional = true },
            ],
            Work
        )
        {
            Example = Field.Example(("throw", "12 ft"), ("overlap", "33 %"), ("bed", "40 ft")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity thrown = inputs.Measure("throw"),
            overlap = inputs.Measure("overlap");
        var sheet = new WorkingSheet();
        bool metric = UnitSystem.IsMetric(thrown);
        string unit = metric ? "m" : "ft";
        (Quantity? swath, RateProblem? problem) = Swath.Effective(sheet, thrown, overlap, metric);
        if (swath is not { } effective)
            return problem!;
        Quantity wide = thrown.To(unit);
        Quantity widest = sheet.Line("Swath at 30 % on each side", $"{wide} × (1 - 0.3)", wide * 0.7m, unit);
        Quantity narrowest = sheet.Line("Swath at 35 % on each side", $"{wide} × (1 - 0.35)", wide * 0.65m, unit);
        ImmutableArray<Unit> other = UnitSystem.Units(metric ? "ft" : "m");
        ImmutableArray<RateResult>.Builder results = ImmutableArray.CreateBuilder<RateResult>();
        results.Add(new("swath", "Effective swath: distance from pass to pass", effective, other));
        results.Add(new("swath-at-30", "Widest swath advised (30 % on each side)", widest, other));
        results.Add(new("swath-at-35", "Narrowest swath advised (35 % on each side)", narrowest, other));
        if (inputs.MeasureOrNull("bed") is { } bed)
        {
            Quantity across = sheet.Convert("Width of the bed", bed, unit);
            decimal passes = sheet.Line("Passes", $"{across} ÷ {effective}", (across / effective).Value);
            results.Add(new("passes", "Passes for the bed, rounded up", Quantity.Number(decimal.Ceiling(passes)), []));
        }

        bool isAdvised = effective.InBase <= widest.InBase && effective.InBase >= narrowest.InBase;
        return new RateAnswer
        {
            Results = results.ToImmutable(),
            Working = sheet.Lines,
            Notes =
            [
                isAdvised
                    ? "The overlap is within the 30 to 35 % on each side that is advised for hand-cranked spreaders."
                    : "The overlap is not within the 30 to 35 % on each side that is advised for hand-cranked "
                        + "spreaders: use pans to check it.",
                "Calibrate with this swath, and mark the passes with flags or pots.",
            ],
            Assumed = ["Still air, and the same throw to both sides.", .. Swath.Doubts(effective, thrown)],
            Cautions = GranuleRate.Cautions,
            Sources = ["ncsu-handcrank"],
        };
    }
}
