namespace WeedAdvisor.Planning.Season.Year;

/// <summary>The 52 weeks of a plan. A week is named by its first day.</summary>
/// <param name="From">The first day of week 0.</param>
public sealed record SeasonYear(DateOnly From)
{
    /// <summary>Weeks of a plan.</summary>
    public const int Weeks = 52;

    private const int DaysInWeek = 7;

    /// <summary>The first day of a week; negative for weeks before the plan.</summary>
    public DateOnly DayOf(int week) => From.AddDays(week * DaysInWeek);

    /// <summary>The last day of week 51.</summary>
    public DateOnly LastDay => DayOf(Weeks).AddDays(-1);

    /// <summary>The seven days of a week.</summary>
    public IEnumerable<DateOnly> DaysOf(int week) => Enumerable.Range(0, DaysInWeek).Select(DayOf(week).AddDays);

    /// <summary>The week that a day falls in; negative before the plan, 52 or more after it.</summary>
    public int WeekOf(DateOnly day) => (int)Math.Floor((day.DayNumber - From.DayNumber) / (double)DaysInWeek);

    /// <summary>The first week that starts on a day or after it.</summary>
    public int FirstWeekFrom(DateOnly day) => -(int)Math.Floor((From.DayNumber - day.DayNumber) / (double)DaysInWeek);
}
