using System.Globalization;
using System.Text;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Season;

/// <summary>
/// The strip as a picture for HTML. Grades differ in lightness and in pattern, not in hue alone, so that the picture
/// can be read by everybody and on a black-and-white printer.
/// </summary>
internal static class StripSvg
{
    private const int Left = 170,
        Cell = 13,
        Row = 20,
        Top = 44;

    /// <summary>The picture, as an SVG element.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="number">Which drawing of its page it is: its ids are its own.</param>
    public static string Of(Strip strip, string title, int number)
    {
        int width = Left + (SeasonYear.Weeks * Cell) + 10,
            top = strip.Rounds.IsEmpty ? Top : Top + Row,
            height = top + (strip.Rows.Length * Row) + 8;
        var svg = new StringBuilder();
        Add(svg, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" role=\"img\" ");
        Add(svg, $"aria-label=\"{Text(title)}\">");
        Add(svg, $"<defs><pattern id=\"part-{number}\" ");
        svg.Append("width=\"4\" height=\"4\" patternUnits=\"userSpaceOnUse\">")
            .Append(
                "<rect width=\"4\" height=\"4\" fill=\"#bcd8c1\"/><path d=\"M0 4L4 0\" "
                    + "stroke=\"#2f6b3c\"/></pattern></defs>"
            );
        Months(svg, strip, height);
        for (int row = 0; row < strip.Rows.Length; row++)
            Weeks(svg, strip.Rows[row], top + (row * Row), number);
        Rounds(svg, strip);
        Applications(svg, strip, height);
        svg.Append("</svg>");
        return svg.ToString();
    }

    private static void Months(StringBuilder svg, Strip strip, int height)
    {
        foreach ((int week, string name) in strip.Months)
        {
            int x = Left + (week * Cell);
            Add(svg, $"<line x1=\"{x}\" y1=\"4\" x2=\"{x}\" y2=\"{height}\" stroke=\"#bbb\" stroke-width=\"0.5\"/>");
            Add(svg, $"<text x=\"{x + 2}\" y=\"14\" class=\"small\">{Text(name)}</text>");
        }
    }

    private static void Weeks(StringBuilder svg, StripRow row, int y, int number)
    {
        Add(svg, $"<text x=\"{Left - 6}\" y=\"{y + 14}\" text-anchor=\"end\">{Text(row.Name)}</text>");
        for (int week = 0; week < row.Weeks.Length; week++)
        {
            string fill = row.Weeks[week] switch
            {
                Cover.Held => "#2f6b3c",
                Cover.Partly => FormattableString.Invariant($"url(#part-{number})"),
                Cover.Open => "#d9534f",
                _ => "#f2f2f2",
            };
            Add(svg, $"<rect x=\"{Left + (week * Cell)}\" y=\"{y + 2}\" width=\"{Cell - 1}\" height=\"{Row - 4}\" ");
            Add(svg, $"fill=\"{fill}\"/>");
        }
    }

    private static void Rounds(StringBuilder svg, Strip strip)
    {
        if (strip.Rounds.IsEmpty)
            return;
        Add(svg, $"<text x=\"{Left - 6}\" y=\"{Top + 14}\" text-anchor=\"end\">rounds</text>");
        for (int week = 0; week < strip.Rounds.Length; week++)
        {
            if (!strip.Rounds[week])
                continue;
            int x = Left + (week * Cell) + 5;
            Add(svg, $"<rect x=\"{x}\" y=\"{Top + 3}\" width=\"3\" height=\"{Row - 6}\" fill=\"#444\"/>");
        }
    }

    private static void Applications(StringBuilder svg, Strip strip, int height)
    {
        for (int week = 0; week < strip.Marks.Length; week++)
        {
            int x = Left + (week * Cell);
            if (strip.Marks[week] is { } mark)
            {
                Add(
                    svg,
                    $"<line x1=\"{x}\" y1=\"34\" x2=\"{x}\" y2=\"{height}\" stroke=\"#000\" stroke-width=\"1.5\"/>"
                );
                Add(svg, $"<text x=\"{x - 4}\" y=\"32\" font-weight=\"bold\">{mark}</text>");
            }
            else if (strip.Shut[week])
            {
                Add(svg, $"<rect x=\"{x}\" y=\"34\" width=\"{Cell - 1}\" height=\"5\" fill=\"#777\"/>");
            }
        }
    }

    private static void Add(StringBuilder svg, FormattableString part) =>
        svg.Append(part.ToString(CultureInfo.InvariantCulture));

    private static string Text(string text) => HtmlLetters.Of(text);
}
