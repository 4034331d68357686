using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Reports.Money;
using WeedAdvisor.Reports.Season;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Documents;

/// <summary>Drawings in characters.</summary>
internal static class TextDrawings
{
    public static void Write(Page page, Drawing drawing, int left, bool colour)
    {
        switch (drawing)
        {
            case SwingDrawing swings:
                SwingBars.Write(page, swings.Sensitivity);
                break;
            case StripDrawing strip:
                Write(page, strip.Strip, left, colour);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(drawing), drawing, "a drawing without characters");
        }
    }

    private static void Write(Page page, Strip strip, int left, bool colour)
    {
        const int Columns = StripText.NameColumns + SeasonYear.Weeks;
        if (page.Width < left + Columns)
        {
            page.Write(left, FormattableString.Invariant($"The strip of the year needs {Columns} columns: use --width {Columns} or more."));
            return;
        }

        int row = 0;
        foreach (string line in StripText.Lines(strip))
            page.Drawn(left, line, colour && row++ >= StripText.HeadRows ? StripColour.Of : null);
        page.Write(left, StripText.Key);
    }
}
