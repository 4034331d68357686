using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Areas;

/// <summary>A house or yard with aisles: all of it, and the part on which pots stand.</summary>
internal static class BedArea
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "area",
            "bed",
            "House or yard with aisles",
            "Measure the whole, then the aisles that run along it. Where aisles run both ways, enter their share of "
                + "the whole instead.",
            [
                new("length", "Length", AreaField.Side(), "Along the aisles."),
                new("width", "Width", AreaField.Side(), "Across the aisles."),
                new(
                    "aisles",
                    "Number of aisles",
                    new RateFieldKind.Number(0, 500, IsWhole: true),
                    "Aisles that run the whole length."
                )
                {
                    IsOptional = true,
                },
                new("aisle-width", "Width of an aisle", AreaField.Side(), "From pot to pot or bed edge to bed edge.")
                {
                    IsOptional = true,
                },
                new(
                    "aisle-share",
                    "Share of aisles",
                    Field.Measure("%") with
                    {
                        MayBeZero = true,
                    },
                    "Of the whole ground, when you know it, in place of their number and width."
                )
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(("length", "96 ft"), ("width", "30 ft"), ("aisles", "4"), ("aisle-width", "18 in")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        RateProblem? wrong = inputs.Has("aisle-share")
            ? Entered.Wrong(inputs, "a share of aisles", [], ["aisles", "aisle-width"])
            : Entered.Wrong(inputs, "a bed without a share of aisles", ["aisles"], []);
        if (wrong is not null)
            return wrong;
        var sheet = new WorkingSheet();
        string side = inputs.Measure("length").Unit.Symbol is "m" or "cm" or "mm" or "km" ? "m" : "ft";
        Quantity length = sheet.Convert("Length", inputs.Measure("length"), side);
        Quantity width = sheet.Convert("Width", inputs.Measure("width"), side);
        Quantity gross = sheet.Line("Whole area", $"{length} × {width}", length * width, side + "2");
        (Quantity? aisles, RateProblem? problem) = inputs.Has("aisle-share")
            ? ByShare(sheet, inputs.Measure("aisle-share"), gross)
            : ByWidth(sheet, inputs, length, width);
        if (aisles is not { } lost)
            return problem!;
        Quantity net = sheet.Line("Area of the beds", $"{gross} - {lost}", gross - lost, gross.Unit.Symbol);
        return new RateAnswer
        {
            Results =
            [
                AreaField.Result("beds", "Area of the beds", net),
                AreaField.Result("whole", "Whole area", gross),
                new("aisle-share", "Share of aisles", (lost / gross).To("%"), []),
            ],
            Working = sheet.Lines,
            Assumed = ["Corners are square and aisles are as wide all along."],
            Cautions =
            [
                "Broadcast on the beds alone, the rate counts on the area of the beds; let nothing fall in the aisles.",
            ],
            Sources = ["ucanr-area", "common-practice"],
        };
    }

    private static (Quantity?, RateProblem?) ByShare(WorkingSheet sheet, Quantity share, Quantity gross) =>
        share.Unit.Symbol != "%" ? (null, new("aisle-share", "write it in %"))
        : share.Value >= 100
            ? (null, new("aisle-share", $"{share} leaves no room for a bed; it must be less than 100 %"))
        : (sheet.Line("Aisles", $"{gross} × {share} ÷ 100 %", gross * share.InBase, gross.Unit.Symbol), null);

    private static (Quantity?, RateProblem?) ByWidth(
        WorkingSheet sheet,
        RateInputs inputs,
        Quantity length,
        Quantity width
    )
    {
        decimal count = inputs.Number("aisles");
        if (count > 0 && !inputs.Has("aisle-width"))
            return (null, new("aisle-width", "not entered; aisles need it"));
        Quantity each =
            count == 0
                ? width * 0
                : sheet.Convert("Width of an aisle", inputs.Measure("aisle-width"), width.Unit.Symbol);
        if (each.Value * count >= width.Value)
        {
            return (
                null,
                new(
                    "aisle-width",
                    $"{Figures.Of(count, 6)} aisles of {each} take the whole width of {width} and leave no room for a "
                        + $"bed"
                )
            );
        }

        string sum = $"{Figures.Of(count, 6)} × {each} × {length}";
        return (sheet.Line("Aisles", sum, each * length * count, length.Unit.Symbol + "2"), null);
    }
}
