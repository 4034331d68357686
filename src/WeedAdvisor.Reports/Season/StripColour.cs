using System.Text;

namespace WeedAdvisor.Reports.Season;

/// <summary>
/// Colours the strips in a text with the control sequences of ECMA-48 (SGR). The characters stay, so that nothing is lost
/// where colours cannot be told apart.
/// </summary>
internal static class StripColour
{
    private const char Escape = '\u001b';

    /// <summary>The text with its strips coloured.</summary>
    public static string Of(string text, SeasonReport report)
    {
        HashSet<string> rows =
        [
            .. report.Areas
                .SelectMany(area => new[] { area.Plan, area.After })
                .OfType<Planning.Season.Programme.YearPlan>()
                .SelectMany(plan => StripText.Lines(Strip.Of(plan)).Skip(2))
                .Select(line => line.TrimEnd()),
        ];
        return string.Join('\n', text.Split('\n').Select(line => rows.Contains(line) ? Row(line) : line));
    }

    private static string Row(string line)
    {
        var painted = new StringBuilder(line[..StripText.NameColumns]);
        char before = ' ';
        foreach (char mark in line[StripText.NameColumns..])
        {
            if (mark != before)
                painted.Append(Escape).Append('[').Append(Code(mark)).Append('m');
            painted.Append(mark);
            before = mark;
        }

        return painted.Append(Escape).Append("[0m").ToString();
    }

    // Green, yellow, red, grey.
    private static string Code(char mark) => mark switch
    {
        '#' => "32",
        '+' => "33",
        'o' => "31",
        _ => "90",
    };
}
