using WeedAdvisor.Planning.Dates;

namespace WeedAdvisor.Reports.Text;

/// <summary>When an action can, and must, be done, in lines: only what differs from "any day from now on".</summary>
internal static class DateLines
{
    public static void Write(Page page, int indent, ActionDates? dates, DateOnly day)
    {
        if (dates is null)
            return;
        if (dates is { Latest: { } latest, LatestBecause: { } presses })
            page.Write(indent, $"{(latest == day ? "today" : $"by {Figures.LongDay(latest)}")}: {presses}");
        if (dates.LookAgain is { } look)
            page.Write(indent, $"look again from {Figures.LongDay(look)}: its effect may fade by then");
    }
}
