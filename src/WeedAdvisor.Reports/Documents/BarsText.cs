using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Documents;

/// <summary>Bars in characters: the name and the figure on one line, the bar below.</summary>
internal static class BarsText
{
    private const char Mark = '#';

    public static void Write(Page page, BarsDrawing drawing, int left)
    {
        decimal longest = drawing.Bars.Select(bar => bar.Length).DefaultIfEmpty(0).Max();
        int columns = Math.Max(1, page.Width - left);
        foreach (Bar bar in drawing.Bars)
        {
            page.Write(left, "", $"{bar.Name}: {bar.Figure}");
            int marks = longest == 0 ? 0 : (int)Math.Round(bar.Length / longest * columns);
            if (marks > 0)
                page.Drawn(left, new string(Mark, marks));
        }
    }
}
