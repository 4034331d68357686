using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>
/// Volume per area from what each nozzle gives in a time while the sprayer stands: see <see cref="FlowRule"/>.
/// </summary>
internal static class NozzleFlow
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "sprayer",
            "nozzle-flow",
            "Nozzle flow and speed",
            "Catch every nozzle for the same time while the sprayer stands at working pressure. The sum finds worn and "
                + "blocked "
                + "nozzles and the spray volume at your speed.",
            [
                new(
                    "caught",
                    "Catch of each nozzle",
                    Field.Liquid() with
                    {
                        IsList = true,
                    },
                    "One catch for each nozzle, in the order of the boom."
                ),
                new(
                    "time",
                    "Time of each catch",
                    Field.Time() with
                    {
                        IsList = false,
                    },
                    "The same for every nozzle; a minute is usual."
                )
                {
                    Default = "60 s",
                },
                new(
                    "speed",
                    "Speed",
                    Pace.Kind(),
                    "Measure it over a course on the ground to be sprayed, not on a road."
                ),
                new(
                    "spacing",
                    "Width for a nozzle",
                    Field.Width(),
                    "Nozzle spacing; for bands the band width; for directed sprays the row width."
                ),
                new(
                    "nozzles",
                    "Nozzles on that width",
                    new RateFieldKind.Number(1, 20, IsWhole: true),
                    "1 for a boom; 2 when two nozzles spray the same row."
                )
                {
                    Default = "1",
                },
                new(
                    "tolerance",
                    "Most that a nozzle may be off",
                    Field.Measure("%") with
                    {
                        Most = Quantity.Of(50, "%"),
                    },
                    "In per cent of the mean."
                )
                {
                    Default = "10 %",
                },
                Pace.Travel with
                {
                    Default = "wheels",
                },
            ],
            Work
        )
        {
            Example = Field.Example(
                ("caught", "51, 50, 52, 44, 50 fl-oz"),
                ("time", "60 s"),
                ("speed", "3 mph"),
                ("spacing", "20 in")
            ),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity speed = inputs.Measure("speed");
        if (Pace.Doubt(speed, inputs.Word("travel") == Pace.Foot, "speed") is { } doubt)
            return doubt;
        var sheet = new WorkingSheet();
        ImmutableArray<Quantity> catches = inputs.List("caught");
        bool metric = UnitSystem.IsMetric(catches[0]);
        Quantity mean = sheet.Mean("Mean catch", catches);
        Quantity flow = FlowRule.OfCatch(sheet, mean, inputs.Measure("time"), metric);
        decimal count = inputs.Number("nozzles");
        Quantity onWidth =
            count == 1
                ? flow
                : sheet.Line(
                    "Flow on the width",
                    $"{flow} × {Figures.Of(count, 2)} nozzles",
                    flow * count,
                    flow.Unit.Symbol
                );
        Quantity volume = FlowRule.Volume(sheet, onWidth, speed, inputs.Measure("spacing"), metric);
        ImmutableArray<string> worn = Worn(catches, mean, inputs.Measure("tolerance"));
        string verdict =
            catches.Length == 1 ? "One nozzle says nothing about the others: catch them all once a season."
            : worn.IsEmpty ? "No nozzle is further off the mean than that."
            : "Clean these nozzles and catch them again; replace those that stay off.";
        return new RateAnswer
        {
            Results =
            [
                SprayVolume.Result(volume),
                FlowRule.Result(flow, "flow", "Mean flow of a nozzle"),
                new("nozzles-off", "Nozzles too far off the mean", Quantity.Number(worn.Length), []),
            ],
            Working = sheet.Lines,
            Notes = [.. worn, verdict],
            Assumed =
            [
                "All nozzles are of one type and size, and the pressure is the same as at work.",
                $"A nozzle more than {inputs.Measure("tolerance")} off the mean is named: common practice.",
            ],
            Cautions = SprayCautions.All,
            Sources = ["mu-g1270a", "mesa-boom", "common-practice"],
        };
    }

    private static ImmutableArray<string> Worn(ImmutableArray<Quantity> catches, Quantity mean, Quantity tolerance)
    {
        ImmutableArray<string>.Builder worn = ImmutableArray.CreateBuilder<string>();
        for (int i = 0; i < catches.Length; i++)
        {
            decimal off = (catches[i].InBase / mean.InBase) - 1;
            if (Math.Abs(off) <= tolerance.InBase)
                continue;
            string share = Figures.Of(Math.Abs(off) * 100, 2);
            string why = off < 0 ? "below the mean: blocked or damaged" : "above the mean: worn";
            worn.Add(FormattableString.Invariant($"Nozzle {i + 1} gave {catches[i]}, {share} % {why}."));
        }

        return worn.ToImmutable();
    }
}
