using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>
/// Through one nozzle the flow goes with the square root of the pressure: flow₂ = flow₁ × √(pressure₂ ÷ pressure₁).
/// </summary>
internal static class ChangeOfPressure
{
    private const decimal WideChange = 2;

    private static readonly Quantity s_least = Quantity.Of(1, "psi");
    private static readonly Quantity s_most = Quantity.Of(1000, "psi");

    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "sprayer",
            "change-of-pressure",
            "Change of pressure",
            "From a flow or spray volume at one pressure to that at another, or to the pressure for another flow or "
                + "volume. "
                + "Enter one of the last two.",
            [
                new("output", "Flow or spray volume now", Output(), "From a calibration at the pressure below."),
                new("pressure", "Pressure now", Pressure(), "Read at the nozzle if you can."),
                new("new-pressure", "New pressure", Pressure(), "To find the flow or volume at it.")
                {
                    IsOptional = true,
                },
                new("new-output", "Flow or volume wanted", Output(), "To find the pressure for it.")
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(("output", "0.4 gpm"), ("pressure", "40 psi"), ("new-pressure", "30 psi")),
        };

    private static RateFieldKind.Measure Pressure() =>
        Field.Measure("psi", "bar", "kPa") with
        {
            Least = s_least,
            Most = s_most,
        };

    private static RateFieldKind.Measure Output() => Field.Measure("gpm", "fl-oz/min", "L/min", "gal/acre", "L/ha");

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        if (inputs.Has("new-pressure") == inputs.Has("new-output"))
            return new RateProblem(
                "new-pressure",
                "enter either the new pressure or the flow or volume wanted, one of the two"
            );
        Quantity output = inputs.Measure("output"),
            pressure = inputs.Measure("pressure");
        var sheet = new WorkingSheet();
        decimal ratio;
        RateResult result;
        if (inputs.MeasureOrNull("new-pressure") is { } newPressure)
        {
            Quantity next = sheet.Convert("New pressure", newPressure, pressure.Unit.Symbol);
            ratio = sheet.Line("Pressures compared", $"{next} ÷ {pressure}", (next / pressure).Value);
            decimal root = sheet.Line("Square root of it", $"√{Figures.Of(ratio, 6)}", SquareRoot.Of(ratio));
            Quantity then = sheet.Line(
                "New flow or volume",
                $"{output} × {Figures.Of(root, 6)}",
                output * root,
                output.Unit.Symbol
            );
            result = Shown(then);
        }
        else
        {
            if (inputs.Measure("new-output").Dimension != output.Dimension)
                return new RateProblem(
                    "new-output",
                    $"it must measure the same as now ({output.Unit}): a flow for a flow, a volume on an area for a "
                        + $"volume on an area"
                );
            Quantity goal = sheet.Convert("Wanted", inputs.Measure("new-output"), output.Unit.Symbol);
            decimal factor = sheet.Line("Flows compared", $"{goal} ÷ {output}", (goal / output).Value);
            ratio = sheet.Line("Square of it", $"{Figures.Of(factor, 6)} × {Figures.Of(factor, 6)}", factor * factor);
            Quantity then = sheet.Line(
                "New pressure",
                $"{pressure} × {Figures.Of(ratio, 6)}",
                pressure * ratio,
                pressure.Unit.Symbol
            );
            if (then.InBase < s_least.InBase || then.InBase > s_most.InBase)
                return new RateProblem(
                    "new-output",
                    $"this would need {then}, which no sprayer gives; change the nozzle or the speed instead"
                );
            result = new RateResult(
                "pressure",
                "New pressure",
                then,
                UnitSystem.Units(UnitSystem.IsMetric(then) ? "psi" : "bar")
            );
        }

        bool isWide = ratio > WideChange || ratio < 1 / WideChange;
        return new RateAnswer
        {
            Results = [result],
            Working = sheet.Lines,
            Notes =
            [
                "Twice the flow needs four times the pressure: for a large change, change the nozzle or the speed.",
                .. isWide
                    ?
                    [
                        "This is more than half or double the pressure. Look up the range of the nozzle before you set "
                            + "it.",
                    ]
                    : (string[])[],
            ],
            Assumed = ["The same nozzle, not worn, and the speed as before."],
            Cautions =
            [
                "Outside the pressure range of the nozzle the spray pattern changes: low pressure narrows it, high "
                    + "pressure makes fine drops that drift.",
                .. SprayCautions.All,
            ],
            Sources = ["common-practice", "memory"],
        };
    }

    private static RateResult Shown(Quantity output) =>
        output.Dimension == Dimension.Flow
            ? new RateResult(
                "flow",
                "New flow",
                output,
                UnitSystem.Units(UnitSystem.IsMetric(output) ? "gpm" : "L/min")
            )
            : SprayVolume.Result(output);
}
