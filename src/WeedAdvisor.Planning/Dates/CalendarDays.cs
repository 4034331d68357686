namespace WeedAdvisor.Planning.Dates;

/// <summary>Days that come round every year.</summary>
public static class CalendarDays
{
    /// <summary>The first time on or after a day that the calendar shows a month and day.</summary>
    /// <param name="monthAndDay">Such as <c>04-15</c>.</param>
    /// <param name="day">The day to look from.</param>
    public static DateOnly Next(string monthAndDay, DateOnly day)
    {
        DateOnly thisYear = InYear(monthAndDay, day.Year);
        return thisYear >= day ? thisYear : InYear(monthAndDay, day.Year + 1);
    }

    /// <summary>
    /// The day that the calendar of a year shows a month and day; 28 February for the 29th of a common year.
    /// </summary>
    public static DateOnly InYear(string monthAndDay, int year)
    {
        DateOnly leap = DateOnly.ParseExact(
            "2024-" + monthAndDay,
            "yyyy-MM-dd",
            System.Globalization.CultureInfo.InvariantCulture
        );
        return new DateOnly(year, leap.Month, Math.Min(leap.Day, DateTime.DaysInMonth(year, leap.Month)));
    }
}
