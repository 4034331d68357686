using System.Globalization;
using System.Text;
using WeedAdvisor.Planning.Season.Programme;

namespace WeedAdvisor.Reports.Season;

/// <summary>The work of one area, as a calendar holds it.</summary>
/// <param name="Area">The area's id.</param>
/// <param name="AreaName">Its name.</param>
/// <param name="From">The first day of the plan.</param>
/// <param name="Work">The work, by day.</param>
public sealed record CalendarArea(string Area, string AreaName, DateOnly From, IReadOnlyList<PlannedWork> Work);

/// <summary>
/// Work as an iCalendar file (RFC 5545): one all-day event for each piece of work, lines folded at 75 octets and ended
/// with CR LF. The same plan gives the same bytes; the time stamp is the first day of the plan, not the clock.
/// </summary>
public static class WorkCalendar
{
    private const int LongestLine = 75;
    private const string LineEnd = "\r\n";

    /// <summary>The file.</summary>
    /// <param name="visit">Id of the visit.</param>
    /// <param name="product">What wrote it, such as <c>Season plan</c>.</param>
    /// <param name="areas">The areas that have a plan.</param>
    public static string Of(string visit, string product, IEnumerable<CalendarArea> areas)
    {
        var text = new StringBuilder();
        Line(text, "BEGIN:VCALENDAR");
        Line(text, "VERSION:2.0");
        Line(text, $"PRODID:-//WeedAdvisor//{product}//EN");
        Line(text, "CALSCALE:GREGORIAN");
        foreach (CalendarArea area in areas)
            Events(text, area, visit);
        Line(text, "END:VCALENDAR");
        return text.ToString();
    }

    private static void Events(StringBuilder text, CalendarArea area, string visit)
    {
        string from = Date(area.From);
        for (int i = 0; i < area.Work.Count; i++)
        {
            PlannedWork work = area.Work[i];
            Line(text, "BEGIN:VEVENT");
            Line(text, FormattableString.Invariant($"UID:{visit}-{area.Area}-{from}-{i + 1}@weedadvisor.invalid"));
            Line(text, $"DTSTAMP:{from}T000000Z");
            Line(text, "DTSTART;VALUE=DATE:" + Date(work.Day));
            // The end of an all-day event is the day after its last (RFC 5545, 3.6.1).
            Line(text, "DTEND;VALUE=DATE:" + Date(work.LastDay.AddDays(1)));
            Line(text, "SUMMARY:" + Escaped(Summary(work, area)));
            Line(text, "DESCRIPTION:" + Escaped(work.Text + " The label is the law; this plan is not a label."));
            Line(text, "CATEGORIES:" + Escaped(SeasonWords.Kind(work.Kind)));
            Line(text, "TRANSP:TRANSPARENT");
            Line(text, "END:VEVENT");
        }
    }

    private static string Summary(PlannedWork work, CalendarArea area) =>
        $"{area.AreaName}: {SeasonWords.Kind(work.Kind)}" + (work.Action is { } action ? $" ({action})" : "");

    private static string Date(DateOnly day) => day.ToString("yyyyMMdd", CultureInfo.InvariantCulture);

    // TEXT values (RFC 5545, 3.3.11).
    private static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (char c in text)
        {
            if (c is '\\' or ';' or ',')
                escaped.Append('\\').Append(c);
            else if (c == '\n')
                escaped.Append("\\n");
            else if (!char.IsControl(c))
                escaped.Append(c);
        }

        return escaped.ToString();
    }

    // Folding counts octets and must not cut a character in two (RFC 5545, 3.1).
    private static void Line(StringBuilder text, string line)
    {
        int octets = 0;
        foreach (Rune rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > LongestLine)
            {
                text.Append(LineEnd).Append(' ');
                octets = 1;
            }

            text.Append(rune.ToString());
            octets += rune.Utf8SequenceLength;
        }

        text.Append(LineEnd);
    }
}
