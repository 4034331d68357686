using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Areas;

/// <summary>
/// Share of what is broadcast that lands between round pots: 1 - (pi ÷ 4) × (width ÷ spacing)² in square rows,
/// 1 - (pi ÷ (2 √3)) × (width ÷ spacing)² in staggered rows. A floor under the losses that were measured
/// (porter-parish-1993).
/// </summary>
internal static class MissedPots
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "area",
            "missed",
            "What lands between pots",
            "How much of a broadcast granule or spray cannot land in a pot. Push pots together before you spread, or "
                + "dose each pot.",
            [
                new("pot-width", "Width of a pot", AreaField.PotWidth(), "At the rim."),
                new(
                    "spacing",
                    "Spacing",
                    AreaField.Spacing(),
                    "From the middle of a pot to the middle of the next in its row."
                ),
                new("pattern", "Rows", PotGrid.Pattern(), "Staggered rows leave the smaller gaps.")
                {
                    Default = "square",
                },
                new(
                    "broadcast",
                    "Product broadcast",
                    Field.Weight(),
                    "What goes on the bed, to learn how much of it is lost."
                )
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(("pot-width", "6 in"), ("spacing", "12 in"), ("broadcast", "10 lb")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity width = inputs.Measure("pot-width"),
            spacing = inputs.Measure("spacing");
        if (PotGrid.TooWide(width, spacing) is { } wrong)
            return wrong;
        var sheet = new WorkingSheet();
        string unit = PotGrid.UnitFor(spacing);
        Quantity pot = PotGrid.Surface(sheet, "Surface of a pot", width, unit);
        Quantity ground = PotGrid.Ground(sheet, spacing, inputs.Word("pattern"), unit);
        Quantity caught = sheet.Line("Share on pots", $"{pot} ÷ {ground}", pot / ground, "%");
        Quantity missed = sheet.Line("Share between pots", $"100 % - {caught}", Quantity.Of(100, "%") - caught, "%");
        Quantity? lost = inputs.MeasureOrNull("broadcast") is { } product
            ? sheet.Line("Product lost", $"{product} × {missed} ÷ 100 %", product * missed.InBase, product.Unit.Symbol)
            : null;
        return new RateAnswer
        {
            Results =
            [
                new("missed", "Lands between pots", missed, []),
                new("caught", "Lands on pots", caught, []),
                .. lost is { } weight ? new[] { Lost(weight) } : [],
            ],
            Working = sheet.Lines,
            Assumed = ["Round pots without leaves, spread evenly and nothing thrown past the edge of the bed."],
            Cautions =
            [
                "The loss in the field is larger: leaves throw granules off and swaths overlap the edge of the bed.",
                "The rate still counts on the whole ground that is covered. Never raise it to make up for what misses "
                    + "the pots.",
            ],
            Sources = ["porter-parish-1993"],
        };
    }

    private static RateResult Lost(Quantity weight) =>
        new(
            "lost",
            "Product lost between pots",
            weight,
            [UnitTable.Of(weight.Unit.Symbol is "g" or "kg" ? "lb" : "kg")]
        );
}
