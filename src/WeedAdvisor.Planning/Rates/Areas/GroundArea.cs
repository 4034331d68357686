using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Areas;

/// <summary>
/// Area of rectangles (length × width) and circles (pi × (width ÷ 2)²), one or several alike (ucanr-area).
/// </summary>
internal static class GroundArea
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "area",
            "ground",
            "Plot, benches, rows or circle",
            "Measure the ground or the bench with a tape. Count benches or strips along rows that are alike and enter "
                + "them at once.",
            [
                new(
                    "shape",
                    "Shape",
                    Field.Choice(("rectangle", "rectangle: plot, bench, strip along a row"), ("circle", "circle")),
                    "Split an odd shape into these and add up."
                )
                {
                    Default = "rectangle",
                },
                new("length", "Length", AreaField.Side(), "The long side of the rectangle.") { IsOptional = true },
                new("width", "Width", AreaField.Side(), "The short side of the rectangle.") { IsOptional = true },
                new("across", "Width of the circle", AreaField.Side(), "Straight across through the middle.")
                {
                    IsOptional = true,
                },
                new(
                    "count",
                    "How many alike",
                    new RateFieldKind.Number(1, 10000, IsWhole: true),
                    "Benches, beds or strips of this size."
                )
                {
                    Default = "1",
                },
            ],
            Work
        )
        {
            Example = Field.Example(("length", "100 ft"), ("width", "6 ft"), ("count", "4")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        bool isCircle = inputs.Word("shape") == "circle";
        RateProblem? wrong = isCircle
            ? Entered.Wrong(inputs, "a circle", ["across"], ["length", "width"])
            : Entered.Wrong(inputs, "a rectangle", ["length", "width"], ["across"]);
        if (wrong is not null)
            return wrong;
        var sheet = new WorkingSheet();
        Quantity one = isCircle ? Circle(sheet, inputs.Measure("across")) : Rectangle(sheet, inputs);
        decimal count = inputs.Number("count");
        Quantity all =
            count == 1
                ? one
                : sheet.Line("Area of all", $"{Figures.Of(count, 6)} × {one}", one * count, one.Unit.Symbol);
        return new RateAnswer
        {
            Results =
            [
                AreaField.Result("area", "Area", all),
                .. count == 1 ? [] : new[] { AreaField.Result("area-of-one", "Area of one", one) },
            ],
            Working = sheet.Lines,
            Assumed = [isCircle ? "The plot is round." : "Corners are square."],
            Sources = ["ucanr-area"],
        };
    }

    private static Quantity Circle(WorkingSheet sheet, Quantity across)
    {
        string unit = across.Unit.Symbol is "m" or "cm" or "mm" or "km" ? "m2" : "ft2";
        return PotGrid.Surface(sheet, "Area", across, unit);
    }

    private static Quantity Rectangle(WorkingSheet sheet, RateInputs inputs)
    {
        Quantity length = inputs.Measure("length"),
            width = inputs.Measure("width");
        string side = length.Unit.Symbol is "m" or "cm" or "mm" or "km" ? "m" : "ft";
        length = sheet.Convert("Length", length, side);
        width = sheet.Convert("Width", width, side);
        return sheet.Line("Area", $"{length} × {width}", length * width, side + "2");
    }
}
