using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>
/// The page of one area to act on: what to do, in the order of the work, what to ask, what to mind. At most
/// <see cref="MostLines"/> lines of <see cref="Columns"/> columns; it tells more of each thing while there is room. Who
/// must keep out, what protects people, what is barred of what the grower holds, and the label of a chemical that is told
/// are never cut.
/// </summary>
internal static class AreaPage
{
    /// <summary>Lines of a page.</summary>
    public const int MostLines = 40;

    /// <summary>Columns at which its lines are counted.</summary>
    public const int Columns = 80;

    /// <summary>Lines that are never cut and that the page has room for.</summary>
    public const int RoomForNeverCut = 15;

    private const int MostThen = 5;

    /// <summary>The page.</summary>
    public static IEnumerable<Block> Of(PageStyle style, AreaAdvice area)
    {
        var chosen = new PageDetail();
        HashSet<Func<PageDetail, PageDetail?>> noRoom = [];
        foreach (Func<PageDetail, PageDetail?> grow in PageGrowth.Wanted)
        {
            if (noRoom.Contains(grow) || grow(chosen) is not { } larger)
                continue;
            if (Fits(style, area, larger))
                chosen = larger;
            else
                noRoom.Add(grow);
        }

        return Blocks(style, area, chosen);
    }

    private static bool Fits(PageStyle style, AreaAdvice area, PageDetail detail)
    {
        Block[] blocks = [.. Blocks(style, area, detail)];
        int lines = LinesOf(blocks);
        if (lines <= MostLines)
            return true;
        int neverCut = LinesOf(NeverCut(style, area, detail));
        return lines <= MostLines + Math.Max(0, neverCut - RoomForNeverCut);
    }

    private static int LinesOf(IEnumerable<Block> blocks) =>
        DocumentText.Of(blocks, Columns).Count(mark => mark == '\n');

    private static IEnumerable<Block> Blocks(PageStyle style, AreaAdvice area, PageDetail detail) =>
        [
            AreaHead.Of(style.Names, area),
            .. PageTail.InTime(area, detail.Mind),
            .. KeepOutSection.Of(style.Names, area, style.Day, MostThen),
            .. PageTail.People(style, area),
            .. WorkSection.Of(style, area, detail),
            .. HeldSection.Usable(style, area, detail),
            .. HeldSection.Of(style, area),
            .. PageTail.NotMet(style, area),
            .. ChemicalSection.Of(style, area, detail),
            .. PageTail.Ask(style, area, detail.AskWhatFor, detail.Waiting),
            .. PageTail.Contradictions(area),
            .. PageTail.Mind(style, area, detail.Mind),
            .. NoteLines.Of(style, area, detail.Notes),
            .. PageTail.Waiting(style, area, detail.Waiting),
            .. PageTail.Left(area, detail.Mind),
        ];

    private static IEnumerable<Block> NeverCut(PageStyle style, AreaAdvice area, PageDetail detail) =>
        [
            .. KeepOutSection.Of(style.Names, area, style.Day, MostThen),
            .. PageTail.People(style, area),
            .. HeldSection.Usable(style, area, detail),
            .. HeldSection.Of(style, area),
            .. WorkSection.Labels(style, area, detail),
        ];
}
