using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Nursery;

/// <summary>Figures of a nursery's plan as they are written on its pages.</summary>
internal static class NurseryWords
{
    /// <summary>Hours: tenths where there are few of them, never so few that they are none.</summary>
    public static Amount Hours(decimal hours) =>
        new(
            hours,
            "h",
            Math.Abs(hours) < 0.1m && hours != 0 ? "0.00"
                : Math.Abs(hours) < 100 ? "0.0"
                : "#,0"
        );

    /// <summary>A share of hours that can be asked for again: rounded up, so that the plan keeps it.</summary>
    public static string AskedHours(decimal hours) =>
        FormattableString.Invariant($"{Math.Ceiling(hours * 100) / 100:0.##}");
}
