using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Mulches;

/// <summary>The depth that a volume of mulch gives: volume ÷ surface.</summary>
internal static class MulchDepth
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "mulch",
            "depth",
            "Depth from a volume",
            "How deep a layer the mulch at hand gives on so many pots or on a bed.",
            [
                new(
                    "volume",
                    "Mulch",
                    Field.Measure("yd3", "ft3", "m3", "L") with
                    {
                        Least = Quantity.Of(1, "mL"),
                        Most = Quantity.Of(10000, "m3"),
                    },
                    "Loose, as delivered."
                ),
                .. Layer.Fields(),
            ],
            Work
        )
        {
            Example = Field.Example(("volume", "1 yd3"), ("area", "324 ft2")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        if (Layer.Wrong(inputs) is { } wrong)
            return wrong;
        var sheet = new WorkingSheet();
        Quantity volume = inputs.Measure("volume");
        bool isUs = Layer.IsUs(volume);
        Quantity surface = Layer.Surface(sheet, inputs, isUs);
        Quantity loose = sheet.Convert("Mulch", volume, isUs ? "ft3" : "m3");
        Quantity depth = sheet.Line("Depth when laid", $"{loose} ÷ {surface}", loose / surface, isUs ? "in" : "cm");
        decimal kept = Layer.Kept(inputs);
        if (kept < 1)
            depth = sheet.Line(
                "Depth once settled",
                $"{depth} × (100 % - {inputs.Measure("settling")})",
                depth * kept,
                depth.Unit.Symbol
            );
        if (depth.In("m") > 1)
            return new RateProblem(
                "volume",
                $"this gives a layer of {depth}, more than can be believed; check volume and surface"
            );
        return new RateAnswer
        {
            Results = [new("depth", "Depth", depth, [UnitTable.Of(isUs ? "cm" : "in")])],
            Working = sheet.Lines,
            Assumed =
            [
                "The layer is as deep all over, and the stem's own space is not taken off.",
                kept == 1 ? "It does not settle." : $"It settles by {inputs.Measure("settling")}.",
            ],
            Cautions =
            [
                "A layer thinner than trials found to work feeds weeds rather than stops them: check what depth the "
                    + "material needs.",
            ],
            Sources = ["common-practice"],
        };
    }
}
