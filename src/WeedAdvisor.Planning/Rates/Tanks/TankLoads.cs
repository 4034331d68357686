using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Products;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Tanks;

/// <summary>
/// Full tanks and the last part tank for an area: spray = area × spray volume; product in a tank = tank ÷ spray volume
/// × rate (mu-g1272). What stays in pump and hoses is mixed on top and is left over.
/// </summary>
internal static class TankLoads
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "tank",
            "loads",
            "Tanks of spray for an area",
            "Calibrate first: the spray volume must be what your sprayer really puts on. Mix only what the area takes.",
            [
                new("area", "Area to spray", Field.Ground(), "The ground that the spray covers."),
                new(
                    "spray-volume",
                    "Spray volume",
                    TankField.SprayVolume(),
                    "From the calibration, within what the label asks for."
                ),
                new("tank", "Tank", TankField.Tank(), "What you fill it to."),
                new("rate", "Rate of product", ProductField.ProductRate(), "From the label, for this use."),
                new("most", "Highest rate of the label", ProductField.ProductRate(), "To hold the rate against.")
                {
                    IsOptional = true,
                },
                new(
                    "dead-volume",
                    "Stays in pump and hoses",
                    Field.Liquid() with
                    {
                        MayBeZero = true,
                    },
                    "Spray that the sprayer cannot put out; spray water until it sucks air and measure what drains."
                )
                {
                    Default = "0 L",
                },
            ],
            Work
        )
        {
            Example = Field.Example(
                ("area", "20000 ft2"),
                ("spray-volume", "40 gal/acre"),
                ("tank", "4 gal"),
                ("rate", "2 pt/acre"),
                ("dead-volume", "1 qt")
            ),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity rate = inputs.Measure("rate"),
            tank = inputs.Measure("tank"),
            dead = inputs.Measure("dead-volume");
        if ((ProductField.DoubtRate("rate", rate) ?? OnArea.AboveMost(inputs) ?? DeadTooLarge(dead, tank)) is { } wrong)
            return wrong;
        var sheet = new WorkingSheet();
        string volume = ProductField.IsUs(tank) ? "gal" : "L",
            ground = volume == "gal" ? "acre" : "ha";
        Quantity area = sheet.Convert("Area", inputs.Measure("area"), ground);
        Quantity onGround = sheet.Convert("Spray volume", inputs.Measure("spray-volume"), $"{volume}/{ground}");
        tank = sheet.Convert("Tank", tank, volume);
        Quantity spray = sheet.Line("Spray for the area", $"{area} × {onGround}", area * onGround, volume);
        if (dead.Value > 0)
        {
            dead = sheet.Convert("Stays in pump and hoses", dead, volume);
            spray = sheet.Line("Spray to mix", $"{spray} + {dead}", spray + dead, volume);
        }

        if (spray.InBase > tank.InBase * TankField.MostLoads)
            return new RateProblem(
                "tank",
                $"{spray} of spray from a tank of {tank} is more than 500 tanks; check area and units"
            );
        (decimal full, Quantity last) = TankField.Split(sheet, spray, tank);
        Quantity inSpray = rate / onGround;
        if (rate.Dimension == Dimension.VolumePerArea && inSpray.InBase >= 1)
            return new RateProblem(
                "rate",
                $"{rate} of product is as much as the whole spray of {onGround}; check both units"
            );
        return new RateAnswer
        {
            Results =
            [
                new("full-tanks", "Full tanks", Quantity.Number(full), []),
                .. full > 0 ? Fill(sheet, "full", "a full tank", tank, inSpray, onGround, rate) : [],
                .. last.Value > 0 ? Fill(sheet, "last", "the last tank", last, inSpray, onGround, rate) : [],
                new("spray", "Spray to mix", spray, [Other(volume)]),
                ProductResults.Amount("all-product", "Product in all", inSpray * spray),
            ],
            Working = sheet.Lines,
            Notes =
                dead.Value > 0 ? [$"{dead} stays in pump and hoses when the area is done.", .. LeftOver.Places] : [],
            Assumed =
            [
                "Pace, pressure and nozzles are those of the calibration.",
                "Tanks are filled to the same mark each time.",
            ],
            Cautions = ProductCautions.All,
            Sources = ["mu-g1272", "common-practice"],
        };
    }

    private static RateProblem? DeadTooLarge(Quantity dead, Quantity tank) =>
        dead.InBase >= tank.InBase ? new("dead-volume", $"{dead} cannot stay behind in a tank of {tank}") : null;

    private static ImmutableArray<RateResult> Fill(
        WorkingSheet sheet,
        string id,
        string name,
        Quantity spray,
        Quantity inSpray,
        Quantity onGround,
        Quantity rate
    )
    {
        RateResult product = ProductResults.Amount($"{id}-product", $"Product in {name}", inSpray * spray);
        sheet.Line(product.Label, $"{spray} ÷ {onGround} × {rate}", product.Value, product.Value.Unit.Symbol);
        string volume = spray.Unit.Symbol;
        if (rate.Dimension == Dimension.WeightPerArea)
            return [new($"{id}-spray", $"Spray in {name}", spray, [Other(volume)]), product];
        Quantity water = sheet.Line($"Water in {name}", $"{spray} - {product.Value}", spray - product.Value, volume);
        return
        [
            new($"{id}-spray", $"Spray in {name}", spray, [Other(volume)]),
            product,
            new($"{id}-water", $"Water in {name}", water, [Other(volume)]),
        ];
    }

    private static Unit Other(string volume) => UnitTable.Of(volume == "gal" ? "L" : "gal");
}
