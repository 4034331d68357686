using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>
/// How it stands with chemicals in an area, in one place: what let weeds through, what could go on and what for, what
/// waits, what becomes possible and when, and why the others may not be used. What is told among the work is not told
/// again.
/// </summary>
internal static class ChemicalSection
{
    private const string NoneNow = "No chemical may be used here now";
    private const int MostNames = 3;

    /// <summary>The section; nothing where no chemical is known.</summary>
    public static IEnumerable<Block> Of(PageStyle style, AreaAdvice area, PageDetail detail)
    {
        AreaChemicals chemicals = style.Chemicals;
        if (chemicals.Free.IsEmpty && chemicals.CountWaiting + chemicals.CountBarred == 0)
            yield break;
        HashSet<string> numbered =
        [
            .. WorkSection
                .Shown(style, detail)
                .SelectMany(line => line.Others.Prepend(line.Best))
                .Select(one => one.Action),
            .. style.Held.Select(one => one.Action).OfType<string>(),
        ];
        bool isNone = chemicals.Free.IsEmpty && chemicals.CountWaiting == 0;
        Line[] lines =
        [
            .. detail.LetThrough ? LetThrough(style, area) : [],
            .. Possible([.. chemicals.Free.Where(one => !numbered.Contains(one.Action))], detail.Chemicals),
            .. Waiting(style, area, detail.Waiting),
            // Where none may be used the first thing asked is why.
            .. isNone ? Reasons(style, Math.Max(1, detail.Barred)) : [],
            .. Later(style, detail.Later),
            .. isNone ? [] : Reasons(style, detail.Barred),
            .. detail.Barred > 0 ? Apart(style, area) : [],
        ];
        if (lines.Length > 0)
        {
            yield return Heading.Section(isNone ? NoneNow : "Chemicals");
            yield return ItemList.Dashes(lines).At(2);
        }
        else if (isNone)
        {
            yield return new Paragraph(NoneNow + ".").At(2);
        }
    }

    // Whoever has the bag still in the shed is told first.
    private static IEnumerable<Line> LetThrough(PageStyle style, AreaAdvice area) =>
        (area.Area.Past ?? [])
            .Where(AreaChemicals.IsLetThrough)
            .OrderByDescending(past => past.Date)
            .Take(1)
            .Select(past =>
                Line.FromString(
                    $"{style.Names.Action(past.Treatment!)} let {WeedsOf(style, past)} through: not the same again,"
                        + " take another group next, and weed first."
                ) with
                {
                    Tone = Tone.Warning,
                }
            );

    private static string WeedsOf(PageStyle style, PastApplication past) =>
        past.Escaped.Count == 0 ? "weeds" : Listing.And([.. past.Escaped.Select(style.Names.Weed)]);

    private static IEnumerable<Line> Possible(FreeChemical[] free, int most)
    {
        foreach (
            (string what, FreeUse use) in ((string, FreeUse)[])
                [
                    ("After the weeding, against what comes", FreeUse.OnComing),
                    ("On what stands, instead of pulling it", FreeUse.OnStanding),
                ]
        )
        {
            FreeChemical[] good = [.. free.Where(one => one.Use == use).OrderBy(one => one.IsLast)];
            if (good.Length > 0)
                yield return Line.FromString(
                    $"{what}{(good.Length > 1 ? ", one of" : "")}: {Named(good, most)}{good[0].Mind}"
                );
        }

        foreach (Line line in RatherNot([.. free.Where(one => one.Use == FreeUse.Poor)], most))
            yield return line;
    }

    // Why not now, once for all that it speaks against; what little speaks for is only named.
    private static IEnumerable<Line> RatherNot(FreeChemical[] poor, int most) =>
        poor.GroupBy(one => one.Against, StringComparer.Ordinal)
            .OrderBy(group => group.Key.Length == 0)
            .ThenByDescending(group => group.Count())
            .Take(most)
            .Select(group =>
                Line.FromString(
                    group.Key.Length == 0
                        ? $"Little call for: {Named(group, most)}"
                        : $"Rather not now: {Named(group, most)}. {group.Key}"
                )
            );

    private static string Named(IEnumerable<FreeChemical> chemicals, int most) =>
        Listing.Some([.. chemicals.Select(one => one.Text)], most);

    private static IEnumerable<Line> Waiting(PageStyle style, AreaAdvice area, int most)
    {
        ImmutableArray<WaitingGroup> groups = style.Chemicals.Waiting;
        int told = Math.Min(groups.Length, Math.Max(1, most));
        return groups
            .Take(told)
            .Select(
                (group, at) =>
                {
                    // The last line that is told counts what has none.
                    int more = at == told - 1 ? groups.Skip(told).Sum(other => other.Actions.Length) : 0;
                    return Line.FromString(
                        Figures.Sentence(WaitingWords.InBrief(style.Names, area, group, more, most > 0))
                    );
                }
            );
    }

    private static IEnumerable<Line> Later(PageStyle style, int most) =>
        style
            .Chemicals.Later.Take(most)
            .Select(line =>
                Line.FromString(
                    $"{line.When}: {Listing.Some([.. line.Chemicals.Select(style.Names.Action)], MostNames)}"
                )
            );

    // Behind the last of them, how many there are in all.
    private static IEnumerable<Line> Reasons(PageStyle style, int most)
    {
        BarredLine[] told = [.. style.Barred.Take(most)];
        return told.Select(
            (line, at) =>
                Line.FromString(
                    line.Text
                        + style.Keys(line.Sources)
                        + (at == told.Length - 1 && !line.IsCounted ? " " + style.BarredInAll : "")
                )
        );
    }

    // One tender crop in a block is cheaper carried off than paid for by all.
    private static IEnumerable<Line> Apart(PageStyle style, AreaAdvice area) =>
        CropApart.Of(style.Names, area) is { } apart
            ?
            [
                Line.FromString(
                    $"Stand {apart.Crop} apart: they alone bar {apart.Chemicals.Length} chemicals for the others here: "
                        + $"{Listing.Some([.. apart.Chemicals.Select(style.Names.Action)], MostNames)}."
                ),
            ]
            : [];
}
