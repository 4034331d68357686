namespace WeedAdvisor.Inference.Tests.Entry;

/// <summary>
/// Entry intervals reckoned by hand, without a calendar library: the clock of New York in 2026, which springs forward
/// on 8 March and falls back on 1 November (15 U.S.C. 260a: second Sunday of March, first Sunday of November, at two).
/// </summary>
internal static class HandClock
{
    private static readonly DateTime s_spring = new(2026, 3, 8, 2, 0, 0);
    private static readonly DateTime s_autumn = new(2026, 11, 1, 2, 0, 0);
    private static readonly TimeSpan s_winter = TimeSpan.FromHours(-5),
        s_summer = TimeSpan.FromHours(-4);

    /// <summary>The moment in universal time. An hour that the clock shows twice is the later one.</summary>
    public static DateTime Universal(DateTime local)
    {
        bool isSummer = local >= s_spring && local < s_autumn.AddHours(-1);
        return local - (isSummer ? s_summer : s_winter);
    }

    /// <summary>Whether so many hours after the end of a use lie beyond the beginning of a day.</summary>
    public static bool Reaches(DateOnly used, TimeOnly? hour, decimal hours, DateOnly day)
    {
        DateTime end = hour is { } at ? used.ToDateTime(at) : used.AddDays(1).ToDateTime(TimeOnly.MinValue);
        return Universal(end).AddHours((double)hours) > Universal(day.ToDateTime(TimeOnly.MinValue));
    }
}
