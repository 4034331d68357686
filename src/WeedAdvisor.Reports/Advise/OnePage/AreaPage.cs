using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>
/// The page of one area to act on: what to do, in the order of the work, what to ask, what to mind. At most
/// <see cref="MostLines"/> lines of <see cref="Columns"/> columns; it tells more of each thing while there is room. Who
/// must keep out, what protects people, what is barred of what the grower holds, and the label of a chemical that is
/// told are never cut.
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

    private static readonly PageDetail s_still = new();

    // The parts of a page in their order, each with the dials that it reads: what a dial does not turn is written once.
    private static readonly ImmutableArray<Part> s_parts =
    [
        new(static _ => s_still, static (style, area, _) => [AreaHead.Of(style.Names, area)]),
        new(
            static page => new PageDetail { Mind = page.Mind },
            static (style, _, page) => PageTail.InTime(style, page.Mind)
        ),
        new(static _ => s_still, KeptOut) { IsNeverCut = true },
        new(static _ => s_still, static (style, area, _) => PageTail.People(style, area)) { IsNeverCut = true },
        new(
            static page => page.OfWork with { Cautions = page.Cautions },
            static (style, area, page) => WorkSection.Of(style, area, page)
        ),
        new(static _ => s_still, static (style, area, _) => PageTail.NotMet(style, area)),
        new(static page => page.OfWork, static (style, _, page) => HeldSection.Of(style, page)) { IsNeverCut = true },
        new(
            static page =>
                page.OfWork with
                {
                    Waiting = page.Waiting,
                    Later = page.Later,
                    Barred = page.Barred,
                    Chemicals = page.Chemicals,
                    LetThrough = page.LetThrough,
                },
            ChemicalSection.Of
        ),
        new(static page => page.OfWork with { Waiting = page.Waiting, Chemicals = page.Chemicals }, MindSection.Of)
        {
            IsNeverCut = true,
        },
        new(
            static page => new PageDetail { AskWhatFor = page.AskWhatFor, Waiting = page.Waiting },
            static (style, area, page) => PageTail.Ask(style, area, page.AskWhatFor, page.Waiting)
        ),
        new(static _ => s_still, static (_, area, _) => PageTail.Contradictions(area)),
        new(
            static page => new PageDetail { Mind = page.Mind },
            static (style, area, page) => PageTail.Mind(style, area, page.Mind)
        ),
        new(
            static page => new PageDetail { Notes = page.Notes },
            static (style, area, page) => NoteLines.Of(style, area, page.Notes)
        ),
        new(
            static page => new PageDetail { Waiting = page.Waiting },
            static (style, area, page) => PageTail.Waiting(style, area, page.Waiting)
        ),
        new(
            static page => new PageDetail { Mind = page.Mind },
            static (_, area, page) => PageTail.Left(area, page.Mind)
        ),
    ];

    // The labels of chemicals stand within the work; here they are only counted.
    private static readonly Part s_labels = new(
        static page => page.OfWork,
        static (style, _, page) => WorkSection.Labels(style, page)
    );

    /// <summary>The page.</summary>
    public static IEnumerable<Block> Of(PageStyle style, AreaAdvice area)
    {
        var room = new Room(style, area);
        var chosen = new PageDetail();
        HashSet<Func<PageDetail, PageDetail?>> noRoom = [];
        foreach (Func<PageDetail, PageDetail?> grow in PageGrowth.Wanted)
        {
            if (noRoom.Contains(grow) || grow(chosen) is not { } larger)
                continue;
            if (room.Has(larger))
                chosen = larger;
            else
                noRoom.Add(grow);
        }

        return s_parts.SelectMany(part => room.BlocksOf(part, chosen));
    }

    private static IEnumerable<Block> KeptOut(PageStyle style, AreaAdvice area, PageDetail _) =>
        KeepOutSection.Of(style.Names, area, style.Day, MostThen);

    private sealed record Part(
        Func<PageDetail, PageDetail> Reads,
        Func<PageStyle, AreaAdvice, PageDetail, IEnumerable<Block>> Write
    )
    {
        public bool IsNeverCut { get; init; }
    }

    // The lines of a page are those of its parts.
    private sealed class Room(PageStyle style, AreaAdvice area)
    {
        private readonly Dictionary<Asked, Laid> _written = [];

        public bool Has(PageDetail page)
        {
            int lines = s_parts.Sum(part => LinesOf(part, page));
            if (lines <= MostLines)
                return true;
            int neverCut =
                LinesOf(s_labels, page) + s_parts.Where(part => part.IsNeverCut).Sum(part => LinesOf(part, page));
            return lines <= MostLines + Math.Max(0, neverCut - RoomForNeverCut);
        }

        public Block[] BlocksOf(Part part, PageDetail page) => Written(part, page).Blocks;

        private int LinesOf(Part part, PageDetail page) => Written(part, page).Lines;

        private Laid Written(Part part, PageDetail page)
        {
            var key = new Asked(part, part.Reads(page));
            if (_written.TryGetValue(key, out Laid? known))
                return known;
            Block[] blocks = [.. part.Write(style, area, page)];
            return _written[key] = new Laid(blocks, DocumentText.Of(blocks, Columns).Count(mark => mark == '\n'));
        }

        private sealed record Asked(Part Part, PageDetail Detail);

        private sealed record Laid(Block[] Blocks, int Lines);
    }
}
