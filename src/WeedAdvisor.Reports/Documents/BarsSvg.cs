using System.Globalization;
using System.Text;

namespace WeedAdvisor.Reports.Documents;

/// <summary>
/// Bars as a picture inside an HTML page: one grey, each with its name and figure beside it as text, and all of it
/// again in words for those who cannot see it.
/// </summary>
internal static class BarsSvg
{
    private const int Width = 640,
        RowHeight = 40,
        BarTop = 18,
        BarHeight = 12;

    /// <summary>The picture as one <c>svg</c> element.</summary>
    public static string Of(BarsDrawing drawing)
    {
        decimal longest = drawing.Bars.Select(bar => bar.Length).DefaultIfEmpty(0).Max();
        string told = string.Join("; ", drawing.Bars.Select(bar => $"{bar.Name}: {bar.Figure}"));
        var svg = new StringBuilder();
        Add(svg, $"<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" ");
        Add(svg, $"viewBox=\"0 0 {Width} {drawing.Bars.Length * RowHeight}\" ");
        Add(svg, $"aria-label=\"{HtmlLetters.Of($"{drawing.Title}. {told}")}\">\n");
        for (int row = 0; row < drawing.Bars.Length; row++)
        {
            Bar bar = drawing.Bars[row];
            int top = row * RowHeight;
            decimal width = longest == 0 ? 0 : Math.Round(bar.Length / longest * Width, 1);
            Add(svg, $"<text x=\"0\" y=\"{top + 13}\">{HtmlLetters.Of($"{bar.Name}: {bar.Figure}")}</text>\n");
            Add(svg, $"<rect x=\"0\" y=\"{top + BarTop}\" width=\"{width}\" height=\"{BarHeight}\" fill=\"#555\"/>\n");
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void Add(StringBuilder svg, FormattableString part) =>
        svg.Append(part.ToString(CultureInfo.InvariantCulture));
}
