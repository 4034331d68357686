using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products;

/// <summary>A product with two or three actives: each comes in proportion to its strength.</summary>
internal static class Premix
{
    private static readonly ImmutableArray<string> s_strengths = ["first", "second", "third"];

    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "product",
            "premix",
            "Each active of a premix",
            "Enter the rate of product, or the rate wanted of the first active. Each active counts towards its own "
                + "most in a year.",
            [
                new(
                    "first",
                    "Strength in the first active",
                    ProductField.Strength(),
                    "From the label, the active that matters most first."
                ),
                new(
                    "second",
                    "Strength in the second active",
                    ProductField.Strength(),
                    "In the same kind of unit as the first."
                ),
                new("third", "Strength in the third active", ProductField.Strength(), "Where there is one.")
                {
                    IsOptional = true,
                },
                new("product", "Rate of product", ProductField.ProductRate(), "From the label.") { IsOptional = true },
                new("active", "Rate of the first active", ProductField.ActiveRate(), "In place of the rate of product.")
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(("first", "0.5 %"), ("second", "2 %"), ("product", "150 lb/acre")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        ImmutableArray<(string Field, Quantity Strength)> actives =
        [
            .. s_strengths.Where(inputs.Has).Select(field => (field, inputs.Measure(field))),
        ];
        if ((Doubt(actives) ?? Entered.NotOne(inputs, "product", "active")) is { } wrong)
            return wrong;
        var sheet = new WorkingSheet();
        Quantity first = actives[0].Strength;
        Quantity product = inputs.MeasureOrNull("product")
            ?? FromActive.PerArea(sheet, inputs.Measure("active"), first);
        bool isWeight = product.Dimension == Dimension.WeightPerArea;
        if (isWeight != (first.Dimension == Dimension.None))
            return new RateProblem(
                "product",
                $"{product} does not fit a strength of {first}; dry products go by weight and %"
            );
        if (ProductField.DoubtRate("product", product) is { } absurd)
            return absurd with { Field = inputs.Has("product") ? "product" : "active" };
        ImmutableArray<RateResult> results =
        [
            .. actives.Select(active =>
                ProductResults.Active(
                    active.Field,
                    $"The {active.Field} active",
                    ToActive.Active(sheet, product, active.Strength, $"The {active.Field} active")
                )
            ),
        ];
        return new RateAnswer
        {
            Results = results.Insert(0, ProductResults.PerArea("product-per-area", "Product", product)),
            Working = sheet.Lines,
            Assumed = ["The strengths count what the label counts: active ingredient or acid equivalent."],
            Cautions = ProductCautions.All,
            Sources = ["handbook-safety", "mu-g1272"],
        };
    }

    private static RateProblem? Doubt(ImmutableArray<(string Field, Quantity Strength)> actives)
    {
        if (
            actives
                .Select(active => ProductField.Doubt(active.Field, active.Strength))
                .FirstOrDefault(doubt => doubt is not null) is
            { } doubt
        )
        {
            return doubt;
        }

        if (
            actives.FirstOrDefault(active => active.Strength.Dimension != actives[0].Strength.Dimension) is ({ } odd, _)
        )
            return new(odd, "give all strengths in the same kind of unit, % or weight in a volume");
        Quantity sum = actives.Skip(1).Aggregate(actives[0].Strength, (sum, active) => sum + active.Strength);
        return ProductField.Doubt(actives[^1].Field, sum) is { } strong
            ? strong with
            {
                Text = $"the strengths add up to {sum}, more than a product can hold",
            }
            : null;
    }
}
