using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>Swath of a boom = nozzles × spacing; each end nozzle covers half a spacing beyond itself.</summary>
internal static class Boom
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "sprayer",
            "boom",
            "Boom: nozzles and swath",
            "The width that a boom with evenly spaced nozzles treats in a pass, and the ground it covers in an hour.",
            [
                new("nozzles", "Nozzles", new RateFieldKind.Number(1, 200, IsWhole: true), "Only those that are open."),
                new(
                    "spacing",
                    "Nozzle spacing",
                    Field.Width(),
                    "From the middle of a nozzle to the middle of the next."
                ),
                new("swath", "Swath as measured", Field.Width(), "The width of wet ground, to check the sum.")
                {
                    IsOptional = true,
                },
                new("speed", "Speed", Pace.Kind(), "To find the ground covered in an hour.") { IsOptional = true },
                Pace.Travel with
                {
                    Default = "wheels",
                },
            ],
            Work
        )
        {
            Example = Field.Example(("nozzles", "12"), ("spacing", "20 in"), ("speed", "3 mph")),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity spacing = inputs.Measure("spacing");
        if (inputs.MeasureOrNull("swath") is { } narrow && narrow.InBase < spacing.InBase)
            return new RateProblem(
                "swath",
                $"{narrow} is narrower than the nozzle spacing of {spacing}; measure both again"
            );
        var sheet = new WorkingSheet();
        bool metric = UnitSystem.IsMetric(spacing);
        decimal nozzles = inputs.Number("nozzles");
        Quantity apart = sheet.Convert("Nozzle spacing", spacing, metric ? "m" : "ft");
        Quantity swath = sheet.Line(
            "Swath",
            $"{Figures.Of(nozzles, 3)} nozzles × {apart}",
            apart * nozzles,
            apart.Unit.Symbol
        );
        ImmutableArray<RateResult>.Builder results = ImmutableArray.CreateBuilder<RateResult>();
        results.Add(new("swath", "Swath of a pass", swath, UnitSystem.Units(metric ? "ft" : "m")));
        var notes = new List<string>();
        if (inputs.MeasureOrNull("swath") is { } measured)
        {
            Quantity off = new Quantity((measured / swath).Value - 1, Quantity.Number(1).Unit).To("%");
            results.Add(new("measured-against-sum", "Measured swath against the sum", off, []));
            notes.Add(
                Math.Abs(off.Value) <= 10
                    ? "The measured swath agrees with nozzles × spacing."
                    : "The measured swath is off nozzles × spacing by more than 10 %: check the height of the boom, "
                        + "the angle of the nozzles and the count."
            );
        }

        if (inputs.MeasureOrNull("speed") is { } speed)
        {
            if (Pace.Doubt(speed, inputs.Word("travel") == Pace.Foot, "speed") is { } doubt)
                return doubt;
            Quantity perHour = sheet.Convert("Way in an hour", speed, metric ? "m/h" : "ft/h");
            Quantity ground = sheet.Line(
                "Ground in an hour",
                $"{perHour} × {swath}",
                perHour * swath,
                metric ? "m2/h" : "ft2/h"
            );
            Quantity large = sheet.Convert("The same", ground, metric ? "ha/h" : "acre/h");
            results.Add(
                new(
                    "ground-per-hour",
                    "Ground in an hour, without turns and filling",
                    large,
                    UnitSystem.Units(metric ? "acre/h" : "ha/h")
                )
            );
        }

        return new RateAnswer
        {
            Results = results.ToImmutable(),
            Working = sheet.Lines,
            Notes = [.. notes],
            Assumed = ["The nozzles are evenly spaced and the boom is at the height that its nozzles need."],
            Cautions = SprayCautions.All,
            Sources = ["mu-g1270a", "common-practice"],
        };
    }
}
