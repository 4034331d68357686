using WeedAdvisor.Planning.Dates;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Text;

/// <summary>When an action can, and must, be done, in lines: only what differs from "any day from now on".</summary>
internal static class DateLines
{
    public static IEnumerable<Line> Of(ActionDates? dates, DateOnly day)
    {
        if (dates is { Latest: { } latest, LatestBecause: { } presses })
            yield return $"{(latest == day ? "today" : $"by {Figures.LongDay(latest)}")}: {presses}";
        if (dates?.LookAgain is { } look)
            yield return $"look again from {Figures.LongDay(look)}: its effect may fade by then";
    }
}
