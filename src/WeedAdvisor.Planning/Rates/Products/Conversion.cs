using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products;

/// <summary>A rate, a strength or an amount in other units, by the exact sizes of the units.</summary>
internal static class Conversion
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "product",
            "convert",
            "The same rate in other units",
            "Turns a rate, a strength or an amount into the units of another label, scale or jug.",
            [
                new(
                    "value",
                    "Rate, strength or amount",
                    Field.Measure(
                        "lb/acre",
                        "lb/1000ft2",
                        "oz/100ft2",
                        "g/m2",
                        "kg/ha",
                        "gal/acre",
                        "fl-oz/1000ft2",
                        "L/ha",
                        "lb/gal",
                        "g/L",
                        "lb",
                        "gal"
                    ),
                    "With its unit."
                ),
            ],
            Work
        )
        {
            Example = Field.Example(("value", "150 lb/acre")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity value = inputs.Measure("value");
        string[] wanted = Units(value);
        var sheet = new WorkingSheet();
        RateResult[] results =
        [
            .. wanted
                .Where(unit => unit != value.Unit.Symbol)
                .Select(unit => new RateResult(Id(unit), $"In {unit}", sheet.Convert("The same", value, unit), [])),
        ];
        return new RateAnswer
        {
            Results = [.. results],
            Working = sheet.Lines,
            Assumed = ["US units: the gallon of 231 cubic inches, the international acre."],
            Cautions = ["The unit of a label is part of its rate: per acre of ground is not per acre of pots."],
            Sources = ["ksu-conv"],
        };
    }

    private static string[] Units(Quantity value) =>
        value.Dimension switch
        {
            var rate when rate == Dimension.WeightPerArea =>
            [
                "lb/acre",
                "oz/acre",
                "lb/1000ft2",
                "oz/1000ft2",
                "oz/100ft2",
                "g/m2",
                "g/ha",
                "kg/ha",
            ],
            var rate when rate == Dimension.VolumePerArea =>
            [
                "gal/acre",
                "qt/acre",
                "pt/acre",
                "fl-oz/acre",
                "gal/1000ft2",
                "fl-oz/1000ft2",
                "mL/1000ft2",
                "mL/100m2",
                "mL/ha",
                "L/ha",
            ],
            var strength when strength == Dimension.Strength => ["lb/gal", "oz/gal", "lb/100gal", "g/L", "ppm"],
            var weight when weight == Dimension.Weight => ["lb", "oz", "kg", "g"],
            _ => ["gal", "qt", "pt", "fl-oz", "tbsp", "tsp", "L", "mL"],
        };

    private static string Id(string unit) =>
        "in-" + unit.ToLowerInvariant().Replace("/", "-per-", StringComparison.Ordinal);
}
