using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>
/// Flow, speed, width and volume per area hang together by units alone: gal/acre = 5940 × gpm ÷ (mph × inches), where
/// 5940 = 43 560 ft² × 12 in ÷ 88 ft a minute; with feet 495 = 5940 ÷ 12; L/ha = 60 000 × L/min ÷ (km/h × cm).
/// </summary>
internal static class FlowRule
{
    /// <summary>A field for a flow.</summary>
    public static RateFieldKind.Measure Kind() =>
        Field.Measure("gpm", "fl-oz/min", "L/min", "mL/min") with
        {
            Least = Quantity.Of(1, "mL/min"),
            Most = Quantity.Of(500, "gpm"),
        };

    /// <summary>Volume per area from flow, speed and width.</summary>
    /// <param name="sheet">The working.</param>
    /// <param name="flow">The flow that goes on the width.</param>
    /// <param name="speed">The speed.</param>
    /// <param name="width">The width.</param>
    /// <param name="metric">Whether to work in L/min, km/h and cm; else gpm, mph and inches.</param>
    /// <returns>gal/acre or L/ha.</returns>
    public static Quantity Volume(WorkingSheet sheet, Quantity flow, Quantity speed, Quantity width, bool metric)
    {
        (Quantity run, Quantity pace, Quantity wide) = Converted(sheet, flow, "Flow", speed, width, metric);
        return sheet.Line(
            "Spray volume",
            $"{Constant(metric)} × {run} ÷ ({pace} × {wide})",
            run / (pace * wide),
            metric ? "L/ha" : "gal/acre"
        );
    }

    /// <summary>Flow from volume per area, speed and width.</summary>
    /// <param name="sheet">The working.</param>
    /// <param name="volume">The volume per area wanted.</param>
    /// <param name="speed">The speed.</param>
    /// <param name="width">The width.</param>
    /// <param name="metric">Whether to work in L/min, km/h and cm; else gpm, mph and inches.</param>
    /// <returns>gpm or L/min.</returns>
    public static Quantity Flow(WorkingSheet sheet, Quantity volume, Quantity speed, Quantity width, bool metric)
    {
        Quantity dose = sheet.Convert("Volume wanted", volume, metric ? "L/ha" : "gal/acre");
        (Quantity pace, Quantity wide) = (
            sheet.Convert("Speed", speed, metric ? "km/h" : "mph"),
            sheet.Convert("Width", width, metric ? "cm" : "in")
        );
        return sheet.Line(
            "Flow needed",
            $"{dose} × {pace} × {wide} ÷ {Constant(metric)}",
            dose * pace * wide,
            metric ? "L/min" : "gpm"
        );
    }

    /// <summary>A catch in a time as a flow; in US units through ounces a minute and 128 ounces in a gallon.</summary>
    /// <param name="sheet">The working.</param>
    /// <param name="caught">The volume.</param>
    /// <param name="time">The time, above zero.</param>
    /// <param name="metric">Whether to give L/min; else gpm.</param>
    public static Quantity OfCatch(WorkingSheet sheet, Quantity caught, Quantity time, bool metric)
    {
        Quantity spray = sheet.Convert("Catch", caught, metric ? "L" : "fl-oz");
        Quantity minutes = sheet.Convert("Time in minutes", time, "min");
        Quantity flow = sheet.Line("Flow", $"{spray} ÷ {minutes}", spray / minutes, metric ? "L/min" : "fl-oz/min");
        return metric ? flow : sheet.Line("Flow in gallons", $"{flow} ÷ 128 fl-oz in a gal", flow, "gpm");
    }

    /// <summary>A flow as a figure in both systems, with what to catch in a minute.</summary>
    public static RateResult Result(Quantity flow, string id, string label) =>
        UnitSystem.IsMetric(flow)
            ? new RateResult(id, label, flow.To("L/min"), UnitSystem.Units("mL/min", "gpm"))
            : new RateResult(id, label, flow.To("gpm"), UnitSystem.Units("fl-oz/min", "L/min"));

    private static (Quantity Flow, Quantity Speed, Quantity Width) Converted(
        WorkingSheet sheet,
        Quantity flow,
        string label,
        Quantity speed,
        Quantity width,
        bool metric
    ) =>
        metric
            ? (
                sheet.Convert(label, flow, "L/min"),
                sheet.Convert("Speed", speed, "km/h"),
                sheet.Convert("Width", width, "cm")
            )
            : (
                sheet.Convert(label, flow, "gpm"),
                sheet.Convert("Speed", speed, "mph"),
                sheet.Convert("Width", width, "in")
            );

    private static string Constant(bool metric) => metric ? "60000" : "5940";
}
