using System.Globalization;

namespace WeedAdvisor.Inference.Limits;

/// <summary>Figures, counts and days of limits in plain words.</summary>
internal static class LimitWords
{
    private const string NoDay = "a day that is not known";

    private static readonly string[] s_times =
    [
        "never",
        "once",
        "twice",
        "three times",
        "four times",
        "five times",
        "six times",
        "seven times",
        "eight times",
    ];

    /// <summary>How often.</summary>
    public static string Times(decimal count) =>
        count < s_times.Length && count == decimal.Truncate(count) ? s_times[(int)count] : $"{Number(count)} times";

    /// <summary>An amount of active ingredient.</summary>
    public static string Kg(decimal kg) => $"{Number(kg)} kg/ha";

    /// <summary>A number as it is printed.</summary>
    public static string Number(decimal number) =>
        number.ToString(number < 1 ? "0.###" : "0.##", CultureInfo.InvariantCulture);

    /// <summary>Days, the oldest first, a year named once: <c>3 March, 1 May and 2 July 2026</c>.</summary>
    public static string Days(IEnumerable<DateOnly?> days)
    {
        DateOnly[] known = [.. days.OfType<DateOnly>().Distinct().Order()];
        string[] said =
        [
            .. known.Select(
                (day, i) =>
                    i + 1 < known.Length && known[i + 1].Year == day.Year
                        ? day.ToString("d MMMM", CultureInfo.InvariantCulture)
                        : Day(day)
            ),
            .. days.Where(day => day is null).Select(_ => NoDay),
        ];
        return said.Length < 2 ? string.Concat(said) : $"{string.Join(", ", said[..^1])} and {said[^1]}";
    }

    /// <summary>A day.</summary>
    public static string Day(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>The year that a limit counts.</summary>
    public static string Year(YearlyLimit limit) => limit.ByCalendarYear ? "in a calendar year" : "in twelve months";

    /// <summary>A mark for a figure that nobody confirmed.</summary>
    public static string Mark(bool isFromMemory) => isFromMemory ? " (from memory: confirm on the label)" : "";
}
