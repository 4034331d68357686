using System.Globalization;
using System.Text;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Money;

/// <summary>
/// The same bars as a picture inside an HTML page (SVG). It needs no script, no style sheet and nothing from outside,
/// and it carries its figures as text for those who cannot see it.
/// </summary>
public static class SwingSvg
{
    private const int Width = 640;
    private const int LabelHeight = 16;
    private const int RowHeight = 42;
    private const int BarHeight = 14;
    private const int Margin = 10;
    private const int MostLetters = 95;

    /// <summary>The picture as one <c>svg</c> element; nothing when there is no input.</summary>
    /// <param name="sensitivity">The swings; the result in US dollars.</param>
    /// <param name="title">What the picture shows.</param>
    public static string Of(Sensitivity sensitivity, string title)
    {
        if (sensitivity.Swings.IsEmpty)
            return "";
        var scale = SwingScale.Of(sensitivity);
        int height = (sensitivity.Swings.Length * RowHeight) + (2 * Margin);
        var svg = new StringBuilder();
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 {Width} {height}\""
        );
        svg.Append(
            CultureInfo.InvariantCulture,
            $" width=\"{Width}\" height=\"{height}\" font-family=\"sans-serif\" font-size=\"12\">\n"
        );
        svg.Append(CultureInfo.InvariantCulture, $"<title>{HtmlLetters.Of(title)}</title>\n");
        int top = Margin;
        foreach (Swing swing in sensitivity.Swings)
        {
            WriteRow(svg, scale, swing, top);
            top += RowHeight;
        }

        string usual = Across(scale, sensitivity.Base);
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<line x1=\"{usual}\" y1=\"{Margin / 2}\" x2=\"{usual}\" y2=\"{height - (Margin / 2)}\" "
                + $"stroke=\"#000\"/>\n"
        );
        return svg.Append("</svg>\n").ToString();
    }

    private static void WriteRow(StringBuilder svg, SwingScale scale, Swing swing, int top)
    {
        UncertainInput input = swing.Input;
        decimal low = Math.Min(swing.AtLow, swing.AtHigh);
        decimal high = Math.Max(swing.AtLow, swing.AtHigh);
        string label = string.Create(
            CultureInfo.InvariantCulture,
            $"{input.Name}, {input.Low:0.##} to {input.High:0.##} {input.Unit}"
        );
        string figures = $"{label}: {SwingBars.Signed(swing.AtLow)} to {SwingBars.Signed(swing.AtHigh)}";
        // Above its bar, so that a long one runs into nothing.
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<text x=\"{Margin}\" y=\"{top + LabelHeight - 5}\">{HtmlLetters.Of(Fitting(label))}</text>\n"
        );
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<rect x=\"{Across(scale, low)}\" y=\"{top + LabelHeight}\" width=\"{Long(scale, low, high)}\""
        );
        svg.Append(
            CultureInfo.InvariantCulture,
            $" height=\"{BarHeight}\" fill=\"#7a7a7a\"><title>{HtmlLetters.Of(figures)}</title></rect>\n"
        );
    }

    private static string Fitting(string label) =>
        label.Length <= MostLetters ? label : string.Concat(label.AsSpan(0, MostLetters - 3), "...");

    private static string Across(SwingScale scale, decimal value) =>
        Number(Margin + (scale.Share(value) * (Width - (2 * Margin))));

    // A bar that nothing moves is still drawn, as a hair line.
    private static string Long(SwingScale scale, decimal low, decimal high) =>
        Number(Math.Max(1, (scale.Share(high) - scale.Share(low)) * (Width - (2 * Margin))));

    private static string Number(decimal value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
