using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Tanks;

/// <summary>
/// The order in which products of a tank mix go into the water, by formulation code: what must wet and disperse goes in
/// before oils, true solutions and wetters. Common practice; the label overrides.
/// </summary>
internal static class MixingOrder
{
    private static readonly ImmutableArray<(string Word, string Text, int Step)> s_codes =
    [
        ("packet", "water-soluble packet", 1),
        ("WP", "wettable powder", 2),
        ("WG", "water dispersible granule (also DF, WDG)", 3),
        ("SP", "water soluble powder", 3),
        ("SG", "water soluble granule", 3),
        ("SC", "suspension concentrate (also F, FL)", 4),
        ("CS", "capsule suspension", 4),
        ("SE", "suspo-emulsion", 4),
        ("OD", "oil dispersion", 5),
        ("EW", "emulsion, oil in water", 5),
        ("EC", "emulsifiable concentrate", 5),
        ("SL", "soluble concentrate", 6),
    ];

    private static readonly ImmutableArray<string> s_fields = ["first", "second", "third", "fourth"];

    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "tank",
            "order",
            "Order of mixing",
            "Enter the formulation code of each product, in any order. Each must be dispersed before the next goes in.",
            [
                new("tank", "Spray to mix", TankField.Tank(), "What you fill the tank to."),
                new("first", "One product", Codes(), "The two letters beside the name on the label."),
                new("second", "Another product", Codes(), "Only where both labels allow the mix.")
                {
                    IsOptional = true,
                },
                new("third", "Another product", Codes(), "Only where all labels allow the mix.") { IsOptional = true },
                new("fourth", "Another product", Codes(), "Only where all labels allow the mix.") { IsOptional = true },
                new(
                    "adjuvant",
                    "Adjuvant",
                    Field.Choice(("none", "none"), ("wetter", "wetter or spreader"), ("oil", "crop oil")),
                    "Only where the label asks for or allows it."
                )
                {
                    Default = "none",
                },
            ],
            Work
        )
        {
            Example = Field.Example(("tank", "50 gal"), ("first", "SC"), ("second", "WG"), ("adjuvant", "wetter")),
        };

    private static RateFieldKind.Choice Codes() => Field.Choice([.. s_codes.Select(code => (code.Word, code.Text))]);

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        var sheet = new WorkingSheet();
        Quantity tank = inputs.Measure("tank");
        Quantity half = sheet.Line("Water to start with", $"{tank} ÷ 2", tank / 2, tank.Unit.Symbol);
        string other = tank.Unit.Symbol == "L" ? "gal" : "L";
        ImmutableArray<string> products =
        [
            .. s_fields
                .Where(inputs.Has)
                .Select(field => s_codes.Single(code => code.Word == inputs.Word(field)))
                .OrderBy(code => code.Step)
                .Select(code =>
                    $"Add the {code.Word}, {code.Text}, and wait until it is "
                    + $"{(code.Step <= 4 ? "fully dispersed" : "mixed in")}."
                ),
        ];
        string[] adjuvant = inputs.Word("adjuvant") switch
        {
            "wetter" => ["Add the wetter last, with the jet low, so that it does not foam."],
            "oil" => ["Add the crop oil last."],
            _ => [],
        };
        return new RateAnswer
        {
            Results = [new("water-first", "Water to start with", half, [UnitTable.Of(other)])],
            Working = sheet.Lines,
            Notes =
            [
                "Before the first tank of a new mix, make a jar test: the same shares in a jar, in this order, looked "
                    + "at after half an hour."
                    + " If it clots, separates, foams or warms, do not mix it.",
                $"Fill the tank half, {half} of clean water, and start the agitation. Keep it running to the end.",
                .. products,
                .. adjuvant,
                $"Fill up to {tank} and spray at once.",
            ],
            Assumed = ["Order by formulation code, as is common practice. The order on the label overrides it."],
            Cautions =
            [
                "Mix only what no label in the mix forbids. The strictest of the labels holds for all of it.",
                "Fill with an air gap or a check valve, so that spray cannot run back into the water supply.",
                Products.ProductCautions.Protect,
            ],
            Sources = ["common-practice", "formulation-list"],
        };
    }
}
