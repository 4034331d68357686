using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Reports.Money;
using WeedAdvisor.Reports.Season;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Documents;

/// <summary>Drawings in characters.</summary>
internal static class TextDrawings
{
    private const int LeastName = 10;

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
            case BarsDrawing bars:
                BarsText.Write(page, bars, left);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(drawing), drawing, "a drawing without characters");
        }
    }

    // A year that is too wide for the page is drawn in parts of one length, below each other.
    private static void Write(Page page, Strip strip, int left, bool colour)
    {
        int width = page.Width - left;
        int names = Math.Min(StripText.NameColumns, Math.Max(LeastName, width / 3));
        int parts = (SeasonYear.Weeks + width - names - 1) / (width - names);
        int weeks = (SeasonYear.Weeks + parts - 1) / parts;
        for (int from = 0; from < SeasonYear.Weeks; from += weeks)
        {
            if (from > 0)
                page.Gap();
            int row = 0;
            foreach (string line in StripText.Lines(strip, from, weeks, names))
                page.Drawn(
                    left,
                    line,
                    colour && row++ >= StripText.HeadRowsOf(strip) ? drawn => StripColour.Of(drawn, names) : null
                );
        }

        Key(page, strip, left);
    }

    // Between two signs stands more than one blank, also where the key needs several lines.
    private static void Key(Page page, Strip strip, int left)
    {
        string line = "";
        foreach (string sign in StripText.KeyOf(strip).Split(StripText.Between))
        {
            string longer = line.Length == 0 ? sign : line + StripText.Between + sign;
            if (line.Length > 0 && left + longer.Length > page.Width)
            {
                page.Drawn(left, line);
                longer = sign;
            }

            line = longer;
        }

        page.Drawn(left, line);
    }
}
