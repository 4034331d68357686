namespace WeedAdvisor.Inference.Limits;

/// <summary>Which earlier days count in the year of a limit: any twelve months, or the calendar year.</summary>
internal static class YearWindow
{
    /// <summary>The first day on which a use no longer counts.</summary>
    public static DateOnly Over(DateOnly used, bool byCalendarYear) =>
        used.Year == DateOnly.MaxValue.Year ? DateOnly.MaxValue
        : byCalendarYear ? new DateOnly(used.Year + 1, 1, 1)
        // What went on on a leap day is twelve months old when its last day is over.
        : used is { Month: 2, Day: 29 } ? new DateOnly(used.Year + 1, 3, 1)
        : used.AddYears(1);

    /// <summary>
    /// The first day that is so many days after another; the calendar's last where it has no later one.
    /// </summary>
    public static DateOnly After(DateOnly used, decimal days) =>
        days > DateOnly.MaxValue.DayNumber - used.DayNumber
            ? DateOnly.MaxValue
            : used.AddDays((int)decimal.Ceiling(days));

    /// <summary>Whether a use counts on a day.</summary>
    public static bool Counts(DateOnly used, DateOnly day, bool byCalendarYear) =>
        used <= day && day < Over(used, byCalendarYear);
}
