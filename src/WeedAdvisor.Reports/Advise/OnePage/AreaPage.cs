using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>
/// The page of one area to act on: what to do, in the order of the work, what to ask, what to mind. At most
/// <see cref="MostLines"/> lines of <see cref="Columns"/> columns; it tells less of each thing until it fits. Who must
/// keep out, what protects people, what is barred of what the grower holds, and the label of a chemical that is told
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
    private const int MostNotes = 4;

    /// <summary>The page.</summary>
    public static IEnumerable<Block> Of(PageStyle style, AreaAdvice area)
    {
        ImmutableArray<PageDetail> steps = PageDetail.Steps;
        int sparsest = steps.Length - 1;
        int from = 0;
        // The steps tell less and less: the first that fits is found by halving.
        int to = sparsest;
        while (from < to)
        {
            int middle = (from + to) / 2;
            if (Fits(style, area, steps[middle]))
                to = middle;
            else
                from = middle + 1;
        }

        // What room is left goes to what is known of the weeds; where none is left there is nothing to try.
        Block[] plain = [.. Blocks(style, area, steps[to])];
        if (LinesOf(plain) >= MostLines)
            return plain;
        PageDetail chosen = Enumerable
            .Range(0, MostNotes)
            .Select(left => steps[to] with { Notes = MostNotes - left })
            .FirstOrDefault(noted => LinesOf(Blocks(style, area, noted)) <= MostLines, steps[to]);
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
            .. PageTail.Ask(style, area, detail.Told + detail.WithReason > 1),
            .. PageTail.Contradictions(area),
            .. PageTail.Mind(style, area, detail.Mind),
            .. NoteLines.Of(style, area, detail.Notes),
            .. PageTail.Waiting(style, area, detail.Waiting),
            .. PageTail.Later(style, area, detail.Later),
            .. PageTail.Barred(style, area, detail.Barred),
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
