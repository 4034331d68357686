using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Spreaders;

/// <summary>Weight of granules on an area, in steps that a person can follow, and what must be said with it.</summary>
internal static class GranuleRate
{
    /// <summary>Id of the figure.</summary>
    public const string Id = "rate";

    /// <summary>The cautions, in the order of the work.</summary>
    public static ImmutableArray<string> Cautions { get; } =
    [
        "Calibrate with the granule itself, since each flows in its own way; take up what falls in the test and use it "
            + "at the label's rate.",
        "Wear the protective equipment that the label asks for, also while calibrating: granules give off dust.",
        "The label's rate is the law. A sum can bring you to it, never past it.",
        "Sweep granules off walks and paving. Never wash them to a drain, ditch or pond.",
    ];

    /// <summary>A field for a rate of granules.</summary>
    public static RateFieldKind.Measure Kind() =>
        Field.Measure("lb/acre", "lb/1000ft2", "oz/100ft2", "g/m2", "kg/ha") with
        {
            Least = Quantity.Of(1, "lb/acre"),
            Most = Quantity.Of(3000, "lb/acre"),
        };

    /// <summary>Ounces on 1000 ft² (or grams on a square metre) and from there an acre (or a hectare).</summary>
    /// <param name="sheet">The working.</param>
    /// <param name="weight">The granules.</param>
    /// <param name="area">The ground they fell on, above zero.</param>
    /// <param name="metric">Whether to work in kg/ha; else lb/acre.</param>
    /// <returns>lb/acre or kg/ha.</returns>
    public static Quantity PerArea(WorkingSheet sheet, Quantity weight, Quantity area, bool metric)
    {
        if (metric)
        {
            Quantity grams = sheet.Convert("The granules in grams", weight, "g"),
                metres = sheet.Convert("The area", area, "m2");
            Quantity thin = sheet.Line("Rate", $"{grams} ÷ {metres}", grams / metres, "g/m2");
            return sheet.Line("Rate on a hectare", $"{thin} × 10000 m2 in a ha ÷ 1000 g in a kg", thin, "kg/ha");
        }

        Quantity pounds = sheet.Convert("The granules in pounds", weight, "lb"),
            feet = sheet.Convert("The area", area, "ft2");
        Quantity perFoot = sheet.Line("Rate", $"{pounds} ÷ {feet}", pounds / feet, "lb/ft2");
        return sheet.Line("Rate on an acre", $"{perFoot} × 43560 ft2 in an acre", perFoot, "lb/acre");
    }

    /// <summary>The figure in the units of labels and of small areas.</summary>
    /// <param name="rate">lb/acre or kg/ha.</param>
    /// <param name="id">Its id.</param>
    /// <param name="label">Its label.</param>
    public static RateResult Result(Quantity rate, string id = Id, string label = "Rate of granules") =>
        UnitSystem.IsMetric(rate)
            ? new RateResult(id, label, rate.To("kg/ha"), UnitSystem.Units("g/m2", "lb/acre", "lb/1000ft2"))
            : new RateResult(
                id,
                label,
                rate.To("lb/acre"),
                UnitSystem.Units("lb/1000ft2", "oz/100ft2", "g/m2", "kg/ha")
            );

    /// <summary>A weight as a figure that somebody weighs out.</summary>
    public static RateResult Weighed(string id, string label, Quantity weight, bool metric) =>
        metric
            ? new RateResult(id, label, weight.To("g"), UnitSystem.Units("kg", "oz"), IsMeasuredOut: true)
            : new RateResult(id, label, weight.To("oz"), UnitSystem.Units("lb", "g"), IsMeasuredOut: true);
}
