using WeedAdvisor.Planning.Dates;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Text;

/// <summary>When an action can, and must, be done, in lines: only what differs from "any day from now on".</summary>
internal static class DateLines
{
    /// <summary>By when, and what presses; null where nothing does.</summary>
    /// <param name="dates">The dates; null when none are known.</param>
    /// <param name="day">The day of the visit.</param>
    /// <param name="isToday">Whether it stands among the work of today.</param>
    public static Line? Pressing(ActionDates? dates, DateOnly day, bool isToday)
    {
        if (dates is not { Latest: { } latest, LatestBecause: { } presses })
            return null;
        string by =
            latest > day ? $"by {Figures.LongDay(latest)}"
            : isToday ? "today"
            : "as soon as you can";
        return $"{by}: {presses}";
    }

    /// <summary>The lines.</summary>
    /// <param name="dates">The dates; null when none are known.</param>
    /// <param name="day">The day of the visit.</param>
    /// <param name="isToday">Whether it stands among the work of today; else what presses is put off as little as may
    /// be.</param>
    public static IEnumerable<Line> Of(ActionDates? dates, DateOnly day, bool isToday = true)
    {
        if (Pressing(dates, day, isToday) is { } pressing)
            yield return pressing;
        if (dates?.LookAgain is { } look)
            yield return $"look again from {Figures.LongDay(look)}: its effect may fade by then";
    }
}
