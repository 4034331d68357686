using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>Spray volume per area, in steps that a person can follow, in the units in which was asked.</summary>
internal static class SprayVolume
{
    /// <summary>Id of the figure.</summary>
    public const string Id = "volume-per-area";

    /// <summary>A field for a spray volume per area.</summary>
    public static RateFieldKind.Measure Kind() =>
        Field.Measure("gal/acre", "gal/1000ft2", "L/ha", "L/100m2") with
        {
            Least = Quantity.Of(0.5m, "gal/acre"),
            Most = Quantity.Of(2000, "gal/acre"),
        };

    /// <summary>An area from a length and a width, both first brought to feet or metres.</summary>
    /// <param name="sheet">The working.</param>
    /// <param name="label">What the area is.</param>
    /// <param name="length">The length.</param>
    /// <param name="width">The width.</param>
    /// <param name="metric">Whether to work in metres.</param>
    /// <returns>The area, in ft² or m².</returns>
    public static Quantity Area(WorkingSheet sheet, string label, Quantity length, Quantity width, bool metric)
    {
        string unit = metric ? "m" : "ft";
        Quantity long1 = sheet.Convert("Length", length, unit),
            wide = sheet.Convert("Width", width, unit);
        return sheet.Line(label, $"{long1} × {wide}", long1 * wide, metric ? "m2" : "ft2");
    }

    /// <summary>Volume ÷ area, with the volume in gallons or litres and the area in acres or hectares.</summary>
    /// <param name="sheet">The working.</param>
    /// <param name="volume">The spray.</param>
    /// <param name="area">The ground it fell on, above zero.</param>
    /// <param name="metric">Whether to work in litres a hectare; else gallons an acre.</param>
    /// <returns>gal/acre or L/ha.</returns>
    public static Quantity PerArea(WorkingSheet sheet, Quantity volume, Quantity area, bool metric)
    {
        Quantity ground = sheet.Convert(
            metric ? "The area in hectares" : "The area in acres",
            area,
            metric ? "ha" : "acre"
        );
        Quantity spray = sheet.Convert(
            metric ? "The spray in litres" : "The spray in gallons",
            volume,
            metric ? "L" : "gal"
        );
        return sheet.Line("Spray volume", $"{spray} ÷ {ground}", spray / ground, metric ? "L/ha" : "gal/acre");
    }

    /// <summary>The figure, also in the other system and on a small area.</summary>
    /// <param name="volume">gal/acre or L/ha.</param>
    /// <param name="id">Its id.</param>
    /// <param name="label">Its label.</param>
    public static RateResult Result(Quantity volume, string id = Id, string label = "Spray volume") =>
        UnitSystem.IsMetric(volume)
            ? new RateResult(id, label, volume.To("L/ha"), UnitSystem.Units("L/100m2", "gal/acre"))
            : new RateResult(id, label, volume.To("gal/acre"), UnitSystem.Units("gal/1000ft2", "L/ha"));
}
