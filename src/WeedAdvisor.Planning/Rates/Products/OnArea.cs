using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products;

/// <summary>Product for an area: rate × area.</summary>
internal static class OnArea
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "product",
            "on-area",
            "Product for a bed or area",
            "Weigh or pour this much for each bed, spread or spray all of it on the bed, and the rate is kept.",
            [
                new("rate", "Rate of product", ProductField.ProductRate(), "From the label, for this use."),
                new(
                    "area",
                    "Area of one bed",
                    Field.Ground(),
                    "All ground that is covered, gaps between pots included."
                ),
                new("beds", "Beds alike", new RateFieldKind.Number(1, 10000, IsWhole: true), "How many of this size.")
                {
                    Default = "1",
                },
                new("most", "Highest rate of the label", ProductField.ProductRate(), "To hold the rate against.")
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(
                ("rate", "150 lb/acre"),
                ("area", "600 ft2"),
                ("beds", "6"),
                ("most", "200 lb/acre")
            ),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity rate = inputs.Measure("rate"),
            area = inputs.Measure("area");
        if ((ProductField.DoubtRate("rate", rate) ?? AboveMost(inputs)) is { } wrong)
            return wrong;
        var sheet = new WorkingSheet();
        RateResult one = Amount(sheet, rate, area, "product", "Product for one bed");
        decimal beds = inputs.Number("beds");
        Quantity all =
            beds == 1
                ? one.Value
                : sheet.Line(
                    "Product for all beds",
                    $"{Figures.Of(beds, 6)} × {one.Value}",
                    one.Value * beds,
                    one.Value.Unit.Symbol
                );
        return new RateAnswer
        {
            Results = [one, .. beds == 1 ? [] : new[] { ProductResults.Amount("all", "Product for all beds", all) }],
            Working = sheet.Lines,
            Assumed = ["It falls evenly and only on the bed."],
            Cautions = ProductCautions.All,
            Sources = ["common-practice"],
        };
    }

    /// <summary>Product for an area, with its lines.</summary>
    public static RateResult Amount(WorkingSheet sheet, Quantity rate, Quantity area, string id, string label)
    {
        string ground = ProductField.IsUs(rate)
            ? rate.Unit.Symbol.EndsWith("ft2", StringComparison.Ordinal)
                ? "ft2"
                : "acre"
            : rate.Unit.Symbol.EndsWith("m2", StringComparison.Ordinal)
                ? "m2"
                : "ha";
        Quantity covered = sheet.Convert("Area", area, ground);
        RateResult amount = ProductResults.Amount(id, label, rate * area);
        sheet.Line(label, $"{rate} × {covered}", amount.Value, amount.Value.Unit.Symbol);
        return amount;
    }

    /// <summary>A problem when the rate is above the highest that was entered; null when it is not.</summary>
    public static RateProblem? AboveMost(RateInputs inputs)
    {
        Quantity rate = inputs.Measure("rate");
        if (inputs.MeasureOrNull("most") is not { } most)
            return null;
        if (most.Dimension != rate.Dimension)
            return new(
                "most",
                $"{most} and {rate} cannot be held against each other; give both by weight or both by volume"
            );
        return rate.InBase > most.InBase ? new("rate", $"{rate} is above the highest rate of the label, {most}") : null;
    }
}
