using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
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
        HashSet<string> numbered = NamedChemicals.ToldAbove(style, detail);
        bool isNumbered = style.Chemicals.Pair is { } pair && numbered.Contains(pair.Best);
        HashSet<string> told = style.IsClean ? [style.PreventBy] : [];
        bool isNone = chemicals.Free.IsEmpty && chemicals.CountWaiting == 0;
        Line[] lines =
        [
            .. detail.LetThrough ? LetThroughLine.Of(style, area) : [],
            .. Numbered(style, isNumbered && detail.Chemicals >= NamedChemicals.EnoughRoom),
            .. Possible(
                style,
                [.. chemicals.Free.Where(one => !numbered.Contains(one.Action))],
                detail.Chemicals,
                told,
                isNumbered
            ),
            .. Waiting(style, area, detail.Waiting, told),
            // Where none may be used the first thing asked is why.
            .. isNone ? Reasons(style, Math.Max(1, detail.Barred)) : [],
            .. Later(style, detail.Later),
            .. isNone ? [] : Reasons(style, detail.Barred),
            .. Apart(style, area),
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

    private static IEnumerable<Line> Possible(
        PageStyle style,
        FreeChemical[] free,
        int most,
        HashSet<string> told,
        bool isNumbered
    )
    {
        foreach (
            (string what, FreeUse use) in ((string, FreeUse)[])
                [
                    (style.IsClean ? "Against what comes" : "After the weeding, against what comes", FreeUse.OnComing),
                    ("On what stands, instead of pulling it", FreeUse.OnStanding),
                ]
        )
        {
            FreeChemical[] good = [.. NamedChemicals.Best(free, use, most)];
            if (good.Length > 0)
                yield return Line.FromString(
                    $"{what}{(good.Length > 1 ? ", one of" : "")}: {Named(good)}.{When(style, good[0].Action, told)}"
                        + (
                            use == FreeUse.OnComing && !isNumbered && most >= NamedChemicals.EnoughRoom
                                ? PairOf(style)
                                : ""
                        )
                );
        }

        FreeChemical[] little = NamedChemicals.HasRoom(style, most)
            ? [.. NamedChemicals.Best(free, FreeUse.Little, 1)]
            : [];
        if (little.Length > 0)
            yield return Line.FromString(
                $"Weak, with little gain on what is here: {Named(little)}. Better the hand, or a layer."
            );

        bool hasRoom = most >= NamedChemicals.EnoughRoom || free.All(one => one.Use == FreeUse.Poor);
        foreach (Line line in hasRoom ? RatherNot([.. free.Where(one => one.Use == FreeUse.Poor)], most) : [])
            yield return line;
    }

    // The partner of a preventive that stands among the work.
    private static IEnumerable<Line> Numbered(PageStyle style, bool isNumbered) =>
        isNumbered ? [Line.FromString(PairOf(style).TrimStart())] : [];

    private static string PairOf(PageStyle style) =>
        style.Chemicals.Pair is { } pair
            ? $" With {style.Names.Action(pair.Best)}, for {Listing.And([.. pair.Weeds.Select(style.Names.Weed)])}, "
                + $"as far as both labels allow: {style.Names.Action(pair.Partner)}"
                + (
                    pair.Needs.Length == 0
                        ? "."
                        : $", once you tell {Listing.And([.. pair.Needs.Select(style.Names.NeedInWords).Distinct()])}."
                )
            : "";

    // By when, where no line above says the same.
    private static string When(PageStyle style, string action, HashSet<string> told) =>
        style.PressingOn(action) is { Length: > 0 } when && told.Add(when) ? $" {Figures.Sentence(when)}." : "";

    // Why not now, once for all that it speaks against; what little speaks for is only named.
    private static IEnumerable<Line> RatherNot(FreeChemical[] poor, int most) =>
        poor.GroupBy(one => one.Against, StringComparer.Ordinal)
            .OrderBy(group => group.Key.Length == 0)
            .ThenByDescending(group => group.Count())
            .Take(most)
            .Select(group =>
                Line.FromString(
                    group.Key.Length == 0
                        ? $"Little call for: {Some(group, most)}"
                        : $"Rather not now: {Some(group, most)}. {group.Key}"
                )
            );

    private static string Named(IEnumerable<FreeChemical> chemicals) =>
        string.Join("; ", chemicals.Select(one => one.Text));

    private static string Some(IEnumerable<FreeChemical> chemicals, int most) =>
        Listing.Some([.. chemicals.Select(one => one.Text)], most);

    private static IEnumerable<Line> Waiting(PageStyle style, AreaAdvice area, int most, HashSet<string> told)
    {
        ImmutableArray<WaitingGroup> groups = style.Chemicals.Waiting;
        return groups
            .Take(NamedChemicals.ToldOf(style, most))
            .Select(group =>
            {
                string likely = Figures.Sentence(WaitingWords.InBrief(style.Names, area, group, most > 0));
                string rather = RatherNot(style, area, group.Actions[0]);
                return Line.FromString(
                    $"{likely.TrimEnd('.')}.{(rather.Length > 0 ? rather : When(style, group.Actions[0], told))}"
                );
            });
    }

    // Nobody is hurried to what the page holds against others.
    private static string RatherNot(PageStyle style, AreaAdvice area, string action) =>
        area
            .Waiting.First(one => one.Action == action)
            .Against.Any(reason =>
                style.Chemicals.Free.Any(one => one.Use == FreeUse.Poor && one.AgainstBy == reason.Judgement)
            )
            ? " Rather not now either, for the same reason."
            : "";

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
