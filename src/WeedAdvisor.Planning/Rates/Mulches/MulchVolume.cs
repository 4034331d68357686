using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Mulches;

/// <summary>Mulch for a depth: surface × depth, with an allowance for settling.</summary>
internal static class MulchVolume
{
    private static readonly ImmutableArray<string> s_units = ["yd3", "ft3", "m3", "L"];

    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "mulch",
            "volume",
            "Mulch for a depth",
            "How much loose mulch to fetch for a layer on pots or on a bed. Leave room for the layer when you pot.",
            [
                new("depth", "Depth of the layer", Layer.Depth(), "As it has to lie once settled."),
                .. Layer.Fields(),
                new(
                    "bag",
                    "A bag holds",
                    Field.Measure("ft3", "L", "yd3") with
                    {
                        Least = Quantity.Of(1, "L"),
                        Most = Quantity.Of(5, "m3"),
                    },
                    "To learn how many bags."
                )
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(("depth", "1 in"), ("pot-width", "6.5 in"), ("pots", "1000"), ("bag", "2 ft3")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        if (Layer.Wrong(inputs) is { } wrong)
            return wrong;
        var sheet = new WorkingSheet();
        Quantity depth = inputs.Measure("depth");
        bool isUs = Layer.IsUs(depth),
            isPots = !inputs.Has("area");
        Quantity surface = Layer.Surface(sheet, inputs, isUs);
        decimal kept = Layer.Kept(inputs);
        if (kept < 1)
        {
            depth = sheet.Line(
                "Depth when laid",
                $"{depth} ÷ (100 % - {inputs.Measure("settling")})",
                depth / kept,
                depth.Unit.Symbol
            );
        }

        string unit = isUs ? "ft3" : "L";
        Quantity laid = sheet.Convert("Depth", depth, isUs ? "ft" : "m");
        Quantity volume = sheet.Line("Mulch", $"{surface} × {laid}", surface * laid, unit);
        volume = sheet.Convert("Mulch", volume, isUs ? "yd3" : "m3");
        return new RateAnswer
        {
            Results =
            [
                new("volume", "Mulch", volume, [.. Others(volume)]),
                .. isPots ? Pots(sheet, volume, inputs.Number("pots"), isUs) : [],
                .. inputs.MeasureOrNull("bag") is { } bag ? new[] { Bags(sheet, volume, bag) } : [],
            ],
            Working = sheet.Lines,
            Assumed =
            [
                "The stem's own space is not taken off.",
                kept == 1 ? "It does not settle." : $"It settles by {inputs.Measure("settling")}.",
            ],
            Cautions =
            [
                "Keep mulch off the stem, and leave room at the rim for water.",
                "Order a little more than the sum: loads are measured loose and settle on the way.",
            ],
            Sources = ["common-practice"],
        };
    }

    private static IEnumerable<Unit> Others(Quantity volume) =>
        s_units.Where(unit => unit != volume.Unit.Symbol).Select(UnitTable.Of);

    private static RateResult[] Pots(WorkingSheet sheet, Quantity volume, decimal pots, bool isUs)
    {
        string number = Figures.Of(pots, 6);
        Quantity one = sheet.Line("Mulch on a pot", $"{volume} ÷ {number}", volume / pots, isUs ? "fl-oz" : "mL");
        RateResult each = new(
            "per-pot",
            "Mulch on a pot",
            one,
            [UnitTable.Of(isUs ? "mL" : "fl-oz"), UnitTable.Of("in3")]
        );
        if (pots == 1000)
            return [each];
        Quantity many = sheet.Line(
            "Mulch on 1000 pots",
            $"{volume} ÷ {number} × 1000",
            volume / pots * 1000,
            volume.Unit.Symbol
        );
        return [each, new("per-1000-pots", "Mulch on 1000 pots", many, [.. Others(many)])];
    }

    private static RateResult Bags(WorkingSheet sheet, Quantity volume, Quantity bag)
    {
        Quantity all = sheet.Convert("Mulch", volume, bag.Unit.Symbol);
        decimal bags = sheet.Line("Bags", $"{all} ÷ {bag}", (all / bag).Value);
        return new("bags", "Whole bags", Quantity.Number(Math.Ceiling(Math.Round(bags, 9))), []);
    }
}
