using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Products;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Tanks;

/// <summary>Hopper loads of granules for an area: area × rate, split by what the hopper holds.</summary>
internal static class HopperLoads
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "tank",
            "hopper",
            "Hopper loads for an area",
            "Weigh what the hopper holds once. Refill before it runs low: a low hopper throws less.",
            [
                new(
                    "area",
                    "Area to spread",
                    Field.Ground(),
                    "All ground that is covered, gaps between pots included."
                ),
                new(
                    "rate",
                    "Rate of product",
                    Field.Measure("lb/acre", "lb/1000ft2", "kg/ha", "g/m2") with
                    {
                        Most = Quantity.Of(2000, "lb/acre"),
                    },
                    "From the label, for this use."
                ),
                new(
                    "hopper",
                    "Hopper holds",
                    Field.Weight() with
                    {
                        Least = Quantity.Of(10, "g"),
                        Most = Quantity.Of(1, "ton"),
                    },
                    "Weight of granules when filled to the mark."
                ),
                new("most", "Highest rate of the label", ProductField.ProductRate(), "To hold the rate against.")
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(("area", "1 acre"), ("rate", "150 lb/acre"), ("hopper", "40 lb")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        if ((ProductField.DoubtRate("rate", inputs.Measure("rate")) ?? OnArea.AboveMost(inputs)) is { } wrong)
            return wrong;
        var sheet = new WorkingSheet();
        RateResult all = OnArea.Amount(
            sheet,
            inputs.Measure("rate"),
            inputs.Measure("area"),
            "all-product",
            "Product in all"
        );
        Quantity hopper = inputs.Measure("hopper");
        if (all.Value.InBase > hopper.InBase * TankField.MostLoads)
            return new RateProblem(
                "hopper",
                $"{all.Value} from a hopper of {hopper} is more than 500 loads; check area and units"
            );
        (decimal full, Quantity last) = TankField.Split(sheet, all.Value, hopper);
        Quantity covered = sheet.Line(
            "One load covers",
            $"{hopper} ÷ {inputs.Measure("rate")}",
            hopper / inputs.Measure("rate"),
            "ft2"
        );
        return new RateAnswer
        {
            Results =
            [
                new("full-loads", "Full loads", Quantity.Number(full), []),
                .. last.Value > 0 ? new[] { ProductResults.Amount("last-load", "Last load", last) } : [],
                all,
                new("covered", "One full load covers", covered, [UnitTable.Of("acre"), UnitTable.Of("m2")]),
            ],
            Working = sheet.Lines,
            Notes =
            [
                "Mark where each load must end, so that a wrong setting shows after the first load and not after the "
                    + "last.",
            ],
            Assumed = ["The spreader is calibrated with this product and walks at the same pace."],
            Cautions = ProductCautions.All,
            Sources = ["common-practice"],
        };
    }
}
