using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>
/// A band treats only a share of the field: share = band ÷ row. On the treated ground the rate is that of a broadcast;
/// on the whole field it is the broadcast rate × share.
/// </summary>
internal static class Band
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "sprayer",
            "band",
            "Bands along rows",
            "When only a band along each row is treated, the field needs only that share of the broadcast amount.",
            [
                new(
                    "band",
                    "Width treated in a row",
                    Field.Width(),
                    "The whole width: both sides of the row together."
                ),
                new("row", "Distance of the rows", Field.Width(), "From row to row."),
                new(
                    "broadcast",
                    "Broadcast volume or rate",
                    Field.Measure("gal/acre", "L/ha", "lb/acre", "kg/ha", "fl-oz/acre"),
                    "Spray volume or rate of product on the ground that is treated, as the label gives it."
                ),
                new("field", "Field", Field.Ground(), "The whole field, rows and middles together.")
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(
                ("band", "12 in"),
                ("row", "40 in"),
                ("broadcast", "30 gal/acre"),
                ("field", "2 acre")
            ),
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Quantity row = inputs.Measure("row"),
            broadcast = inputs.Measure("broadcast");
        if (inputs.Measure("band").InBase > row.InBase)
            return new RateProblem(
                "band",
                $"{inputs.Measure("band")} is wider than the distance of the rows of {row}; bands would overlap"
            );
        var sheet = new WorkingSheet();
        bool metric = UnitSystem.IsMetric(broadcast);
        Quantity band = sheet.Convert("Width treated", inputs.Measure("band"), row.Unit.Symbol);
        decimal share = sheet.Line("Share treated", $"{band} ÷ {row}", (band / row).Value);
        Quantity perField = sheet.Line(
            "On the whole field",
            $"{broadcast} × {Figures.Of(share, 6)}",
            broadcast * share,
            broadcast.Unit.Symbol
        );
        ImmutableArray<RateResult>.Builder results = ImmutableArray.CreateBuilder<RateResult>();
        results.Add(new("per-field", "On an acre or hectare of field", perField, Other(perField, metric)));
        results.Add(new("share", "Share of the field treated", Quantity.Number(share).To("%"), []));
        if (inputs.MeasureOrNull("field") is { } field)
        {
            Quantity treated = sheet.Line(
                "Ground treated",
                $"{field} × {Figures.Of(share, 6)}",
                field * share,
                field.Unit.Symbol
            );
            Quantity ground = sheet.Convert("Ground treated", treated, metric ? "ha" : "acre");
            string unit = broadcast.Unit.Symbol[..broadcast.Unit.Symbol.IndexOf('/', StringComparison.Ordinal)];
            Quantity total = sheet.Line("For the field", $"{broadcast} × {ground}", broadcast * ground, unit);
            results.Add(new("treated", "Ground treated", ground, UnitSystem.Units(metric ? "acre" : "ha")));
            results.Add(new("total", "For the whole field", total, [], IsMeasuredOut: true));
        }

        return new RateAnswer
        {
            Results = results.ToImmutable(),
            Working = sheet.Lines,
            Notes = ["The treated band still gets the full broadcast rate; the middles get nothing."],
            Assumed = ["The bands are even and do not overlap."],
            Cautions = SprayCautions.All,
            Sources = ["mu-g1270a", "common-practice"],
        };
    }

    private static ImmutableArray<Unit> Other(Quantity rate, bool metric) =>
        rate.Dimension == Dimension.WeightPerArea
            ? UnitSystem.Units(metric ? "lb/acre" : "kg/ha")
            : UnitSystem.Units(metric ? "gal/acre" : "L/ha");
}
