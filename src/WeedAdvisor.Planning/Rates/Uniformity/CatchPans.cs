using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Uniformity;

/// <summary>
/// Evenness of a spreader or sprayer from what equal pans or pots caught: coefficient of variation = standard deviation
/// of the sample ÷ mean.
/// </summary>
internal static class CatchPans
{
    private const int FewestPans = 3;
    private const int ManyPans = 10;

    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "uniformity",
            "pans",
            "Evenness from pans or pots",
            "Set equal pans or empty pots across the swath, with passes on both sides as at work. Spread or spray over "
                + "them and weigh or measure what each caught.",
            [
                new(
                    "caught",
                    "Catch of each pan",
                    Catch(),
                    "One figure for each pan, in the order across the swath; 0 for an empty pan."
                ),
                new(
                    "pan",
                    "Area of a pan",
                    Field.Ground() with
                    {
                        Most = Quantity.Of(10, "m2"),
                    },
                    "Its opening; to find the mean rate."
                )
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            NeedsKnowledge = true,
            Example = Field.Example(("caught", "1.6, 1.9, 2.5, 2.7, 1.8 g"), ("pan", "1 ft2")),
        };

    private static RateFieldKind.Measure Catch() =>
        Field.Measure("g", "mg", "oz", "mL", "fl-oz") with
        {
            IsList = true,
            MayBeZero = true,
            Most = Quantity.Of(100, "kg"),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        ImmutableArray<Quantity> catches = inputs.List("caught");
        if (catches.Any(one => one.Dimension != catches[0].Dimension))
            return new RateProblem("caught", "some are weights and some are volumes; measure all pans in the same way");
        if (catches.Length < FewestPans)
        {
            string few = $"fewer than {FewestPans} pans say nothing about evenness, and {ManyPans} or more are better";
            return new RateProblem("caught", FormattableString.Invariant($"{few}; here there are {catches.Length}"));
        }

        if (catches.All(one => one.Value == 0))
            return new RateProblem("caught", "every pan is empty; nothing was spread over them");
        UsualNumbers usual = inputs.Site.Knowledge.Usual;
        var sheet = new WorkingSheet();
        string unit = catches[0].Unit.Symbol;
        Evenness evenness = Evenness.Of([.. catches.Select(one => one.In(unit))]);
        Quantity mean = sheet.Mean("Mean", catches);
        WriteSpread(sheet, catches, mean, evenness);
        ImmutableArray<RateResult> rate = Rate(sheet, mean, inputs.MeasureOrNull("pan"));
        return new RateAnswer
        {
            Results = [.. Results(evenness, catches[0].Unit), .. rate],
            Working = sheet.Lines,
            Notes =
            [
                Verdict(evenness.Variation, usual),
                .. evenness.Least == 0
                    ? ["At least one pan caught nothing: weeds will come through there."]
                    : (string[])[],
                "For comparison: in nurseries with hand-cranked spreaders the dose was found to vary from pot to pot "
                    + "by up to 250 %.",
                "What evens it out: a steady pace and crank, the right overlap, half the rate twice in crossing "
                    + "passes, still air.",
            ],
            Assumed =
            [
                "The standard deviation is that of a sample: the squares are divided by the number of pans less one.",
                FormattableString.Invariant(
                    $"Up to {Even(usual):0.##} % is called even, above {Uneven(usual):0.##} % uneven: common practice "
                ) + "in spreader tests, from memory.",
                .. catches.Length < ManyPans
                    ? ["So few pans give only a rough figure; ten or more are better."]
                    : (string[])[],
            ],
            Cautions =
            [
                "Take up what the pans caught and use it at the label's rate.",
                "Wear the protective equipment that the label asks for, also in a test.",
                "The label's rate is the law, also where the spread is uneven: never raise the whole to help the thin "
                    + "places.",
                "Never wash granules or spray to a drain, ditch or pond.",
            ],
            Sources = ["ncsu-handcrank", "common-practice", "memory"],
        };
    }

    private static void WriteSpread(
        WorkingSheet sheet,
        ImmutableArray<Quantity> catches,
        Quantity mean,
        Evenness evenness
    )
    {
        Unit unit = catches[0].Unit;
        Quantity deviation = new(evenness.Deviation, unit),
            least = new(evenness.Least, unit),
            most = new(evenness.Most, unit);
        string less = Figures.Of(catches.Length - 1, 3);
        string squares = string.Join(" + ", catches.Select(one => $"({one.To(unit)} - {mean})²"));
        sheet.Line("Sum of the squared differences", squares, evenness.Deviations);
        string root = $"√({Figures.Of(evenness.Deviations, 6)} ÷ {less}), {less} being the pans less one";
        sheet.Line("Standard deviation", root, deviation, unit.Symbol);
        sheet.Line("Coefficient of variation", $"{deviation} ÷ {mean} × 100", Quantity.Number(evenness.Variation), "%");
        sheet.Line("Lowest of the mean", $"{least} ÷ {mean} × 100", least / mean, "%");
        sheet.Line("Highest of the mean", $"{most} ÷ {mean} × 100", most / mean, "%");
        if (least.Value > 0)
            sheet.Line("Highest against lowest", $"{most} ÷ {least}", (most / least).Value);
    }

    private static IEnumerable<RateResult> Results(Evenness evenness, Unit unit)
    {
        yield return new("variation", "Coefficient of variation", Quantity.Number(evenness.Variation).To("%"), []);
        yield return new("mean", "Mean of the pans", new Quantity(evenness.Mean, unit), []);
        yield return new("deviation", "Standard deviation (sample)", new Quantity(evenness.Deviation, unit), []);
        yield return new(
            "lowest",
            "Lowest pan, of the mean",
            Quantity.Number(evenness.Least / evenness.Mean).To("%"),
            []
        );
        yield return new(
            "highest",
            "Highest pan, of the mean",
            Quantity.Number(evenness.Most / evenness.Mean).To("%"),
            []
        );
        if (evenness.Least > 0)
            yield return new(
                "highest-to-lowest",
                "Times the highest is the lowest",
                Quantity.Number(evenness.Most / evenness.Least),
                []
            );
    }

    private static ImmutableArray<RateResult> Rate(WorkingSheet sheet, Quantity mean, Quantity? pan)
    {
        if (pan is not { } opening)
            return [];
        bool metric = UnitSystem.IsMetric(mean),
            isWeight = mean.Dimension == Dimension.Weight;
        string unit = isWeight
            ? metric
                ? "g/m2"
                : "oz/1000ft2"
            : metric
                ? "L/ha"
                : "gal/acre";
        Quantity rate = sheet.Line("Mean rate", $"{mean} ÷ {opening}", mean / opening, unit);
        ImmutableArray<Unit> others = isWeight
            ? UnitSystem.Units("lb/acre", "lb/1000ft2", metric ? "kg/ha" : "g/m2")
            : UnitSystem.Units(metric ? "gal/acre" : "L/ha");
        return [new("rate", "Mean rate over the pans", rate, others)];
    }

    private static string Verdict(decimal variation, UsualNumbers usual) =>
        variation <= Even(usual) / 100
            ? $"Even: a coefficient of variation of {Even(usual):0.##} % or less is what spreader tests usually aim "
                + $"for."
        : variation <= Uneven(usual) / 100
            ? $"Fair: between {Even(usual):0.##} and {Uneven(usual):0.##} %. Look at the overlap and the pace before "
                + "the season."
        : $"Uneven: above {Uneven(usual):0.##} %. Some pots get far too little and others too much; change the swath "
            + "or the setting and test again.";

    private static decimal Even(UsualNumbers usual) => usual[UsualIds.EvenSpread];

    private static decimal Uneven(UsualNumbers usual) => usual[UsualIds.UnevenSpread];
}
