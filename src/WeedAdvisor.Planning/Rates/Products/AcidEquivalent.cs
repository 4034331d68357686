using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products;

/// <summary>
/// Acid equivalent: the part of a salt or ester that is the acid which kills. Acid = active × weight of the acid's
/// molecule ÷ weight of the salt's or ester's. The factors of the list are from memory and not confirmed.
/// </summary>
internal static class AcidEquivalent
{
    // From memory, not confirmed; the label overrides.
    private static readonly ImmutableArray<(string Word, string Text, decimal Part)> s_forms =
    [
        ("2-4-d-dimethylamine", "2,4-D, dimethylamine salt", 0.831m),
        ("2-4-d-ethylhexyl", "2,4-D, 2-ethylhexyl ester", 0.663m),
        ("glyphosate-isopropylamine", "glyphosate, isopropylamine salt", 0.741m),
        ("glyphosate-potassium", "glyphosate, potassium salt", 0.816m),
        ("triclopyr-triethylamine", "triclopyr, triethylamine salt", 0.717m),
        ("triclopyr-butoxyethyl", "triclopyr, butoxyethyl ester", 0.719m),
        ("clopyralid-monoethanolamine", "clopyralid, monoethanolamine salt", 0.759m),
    ];

    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "product",
            "acid-equivalent",
            "Acid equivalent of a salt or ester",
            "Labels of salts and esters state the acid equivalent: use that. This sum is for when only the active "
                + "ingredient is known.",
            [
                new(
                    "strength",
                    "Strength in active ingredient",
                    ProductField.Strength(),
                    "As salt or ester, from the label."
                ),
                new(
                    "part",
                    "Part that is acid",
                    new RateFieldKind.Number(0.2m, 1, IsWhole: false),
                    "The acid's share of the weight, when the label or a table gives it."
                )
                {
                    IsOptional = true,
                },
                new(
                    "form",
                    "Salt or ester",
                    Field.Choice([.. s_forms.Select(form => (form.Word, form.Text))]),
                    "In place of the part; these factors are from memory."
                )
                {
                    IsOptional = true,
                },
                new("acid", "Rate of acid equivalent", ProductField.ActiveRate(), "To learn the product for it.")
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(
                ("strength", "5.4 lb/gal"),
                ("form", "glyphosate-isopropylamine"),
                ("acid", "1 lb/acre")
            ),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity strength = inputs.Measure("strength");
        if ((ProductField.Doubt("strength", strength) ?? Entered.NotOne(inputs, "part", "form")) is { } wrong)
            return wrong;
        bool isRecalled = inputs.Has("form");
        decimal part = inputs.NumberOrNull("part") ?? s_forms.Single(form => form.Word == inputs.Word("form")).Part;
        var sheet = new WorkingSheet();
        string unit =
            strength.Dimension == Dimension.None ? "%"
            : ProductField.IsUs(strength) ? "lb/gal"
            : "g/L";
        Quantity acid = sheet.Line("Acid equivalent", $"{strength} × {Figures.Of(part, 6)}", strength * part, unit);
        ImmutableArray<RateResult> results = [new("acid", "Strength in acid equivalent", acid, Also(unit))];
        if (inputs.MeasureOrNull("acid") is { } wanted)
        {
            Quantity product = FromActive.PerArea(sheet, wanted, acid);
            if (ProductField.DoubtRate("acid", product) is { } absurd)
                return absurd with { Text = $"this takes {product} of product, more than can be believed" };
            results = results.Add(ProductResults.PerArea("product-per-area", "Product", product));
        }

        return new RateAnswer
        {
            Results = results,
            Working = sheet.Lines,
            Assumed =
            [
                isRecalled
                    ? "The factor is from memory and not confirmed. What the label states as acid equivalent overrides "
                        + "it."
                    : "The part that is acid was entered; the label overrides it.",
            ],
            Cautions = [ProductCautions.Label, ProductCautions.NeverUp, ProductCautions.Protect],
            Sources = isRecalled ? ["uiuc-ae", "memory"] : ["uiuc-ae"],
        };
    }

    private static ImmutableArray<Unit> Also(string unit) =>
        unit switch
        {
            "lb/gal" => [UnitTable.Of("g/L")],
            "g/L" => [UnitTable.Of("lb/gal")],
            _ => [],
        };
}
