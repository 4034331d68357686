using System.Globalization;
using System.Text;
using WeedAdvisor.Planning.Season.Programme;

namespace WeedAdvisor.Reports.Season;

/// <summary>
/// The work of a plan as an iCalendar file (RFC 5545): one all-day event for each piece of work, lines folded at 75
/// octets and ended with CR LF. The same plan gives the same bytes; the time stamp is the first day of the plan, not
/// the clock.
/// </summary>
public static class SeasonCalendar
{
    private const int LongestLine = 75;
    private const string LineEnd = "\r\n";

    /// <summary>The file: the work of every area that has a plan.</summary>
    public static string Of(SeasonReport report)
    {
        var text = new StringBuilder();
        Line(text, "BEGIN:VCALENDAR");
        Line(text, "VERSION:2.0");
        Line(text, "PRODID:-//WeedAdvisor//Season plan//EN");
        Line(text, "CALSCALE:GREGORIAN");
        foreach (AreaSeason area in report.Areas)
        {
            foreach (YearPlan plan in new[] { area.Plan, area.After }.OfType<YearPlan>())
                Events(text, plan, report.Visit.Id);
        }

        Line(text, "END:VCALENDAR");
        return text.ToString();
    }

    private static void Events(StringBuilder text, YearPlan plan, string visit)
    {
        string from = Date(plan.Case.Year.From);
        for (int i = 0; i < plan.Work.Length; i++)
        {
            PlannedWork work = plan.Work[i];
            Line(text, "BEGIN:VEVENT");
            Line(
                text,
                FormattableString.Invariant($"UID:{visit}-{plan.Case.Area.Id}-{from}-{i + 1}@weedadvisor.invalid")
            );
            Line(text, $"DTSTAMP:{from}T000000Z");
            Line(text, "DTSTART;VALUE=DATE:" + Date(work.Day));
            // The end of an all-day event is the day after its last (RFC 5545, 3.6.1).
            Line(text, "DTEND;VALUE=DATE:" + Date(work.LastDay.AddDays(1)));
            Line(text, "SUMMARY:" + Escaped(Summary(work, plan)));
            Line(text, "DESCRIPTION:" + Escaped(work.Text + " The label is the law; this plan is not a label."));
            Line(text, "CATEGORIES:" + Escaped(SeasonWords.Kind(work.Kind)));
            Line(text, "TRANSP:TRANSPARENT");
            Line(text, "END:VEVENT");
        }
    }

    private static string Summary(PlannedWork work, YearPlan plan) =>
        $"{plan.Case.Area.Name}: {SeasonWords.Kind(work.Kind)}" + (work.Action is { } action ? $" ({action})" : "");

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
