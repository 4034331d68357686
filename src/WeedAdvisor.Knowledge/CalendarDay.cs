using System.Globalization;

namespace WeedAdvisor.Knowledge;

/// <summary>
/// Reads days, <c>YYYY-MM-DD</c>, of years in which an adviser works: a slip of a key in the year is refused, and there
/// is room on both sides to count from it.
/// </summary>
public static class CalendarDay
{
    private const int FirstYear = 1900,
        LastYear = 2199;
    private static readonly string[] s_exact = ["yyyy-MM-dd"],
        s_typed = ["yyyy-MM-dd", "yyyy-M-d"];

    /// <summary>Reads a day as files have it.</summary>
    public static bool TryRead(string text, out DateOnly day) => TryRead(text, s_exact, out day) && IsNear(day);

    /// <summary>Reads a day as people type it: months and days may lack their nought.</summary>
    public static DateOnly? Typed(string text) => TryRead(text, s_typed, out DateOnly day) && IsNear(day) ? day : null;

    /// <summary>A day as files and pages have it.</summary>
    public static string Text(DateOnly day) => day.ToString(s_exact[0], CultureInfo.InvariantCulture);

    /// <summary>What to expect in place of a text that is no such day.</summary>
    public static string ExpectedInsteadOf(string text) =>
        TryRead(text, s_exact, out _)
            ? string.Create(CultureInfo.InvariantCulture, $"a date of the years {FirstYear} to {LastYear}")
            : "a date, YYYY-MM-DD";

    private static bool TryRead(string text, string[] formats, out DateOnly day) =>
        DateOnly.TryParseExact(text, formats, CultureInfo.InvariantCulture, DateTimeStyles.None, out day);

    private static bool IsNear(DateOnly day) => day.Year is >= FirstYear and <= LastYear;
}
