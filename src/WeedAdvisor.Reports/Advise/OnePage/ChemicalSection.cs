using System.Collections.Immutable;
using System.Globalization;
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
    private const int DaysInWeek = 7;

    // From so many names on there is room for what is weak here.
    private const int EnoughRoom = 2;

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
        bool isNumbered = style.Chemicals.Pair is { } pair && numbered.Contains(pair.Best);
        HashSet<string> told = style.IsClean ? [style.PreventBy] : [];
        bool isNone = chemicals.Free.IsEmpty && chemicals.CountWaiting == 0;
        Line[] lines =
        [
            .. detail.LetThrough ? LetThrough(style, area) : [],
            .. Numbered(style, isNumbered && detail.Chemicals >= EnoughRoom),
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

    // Whoever has the bag still in the shed is told first.
    private static IEnumerable<Line> LetThrough(PageStyle style, AreaAdvice area) =>
        (area.Area.Past ?? [])
            .Where(AreaChemicals.IsLetThrough)
            .OrderByDescending(past => past.Date)
            .Take(1)
            .Select(past =>
                Line.FromString(
                    $"{style.Names.Action(past.Treatment!)} let {WeedsOf(style, past)} through{WhyOf(style, past)}: not"
                        + " the same again, and not more of it. Take another group next, and weed first."
                ) with
                {
                    Tone = Tone.Warning,
                }
            );

    // What it is rated poor on, or has no figure for, and whether its time is over.
    private static string WhyOf(PageStyle style, PastApplication past)
    {
        if (style.Names.Treatment(past.Treatment!) is not { } treatment)
            return "";
        ILookup<string, string> grades = past.Escaped.ToLookup(
            weed => style.Names.GradeOn(treatment, weed) ?? "",
            style.Names.Weed,
            StringComparer.Ordinal
        );
        string[] poor = [.. grades["poor"].Concat(grades["none"])];
        string[] silent = [.. grades[""]];
        int? days = style.Day.DayNumber - past.Date?.DayNumber;
        string[] why =
        [
            .. poor.Length > 0 ? [$"it is rated poor on {Listing.And(poor)}"] : (string[])[],
            .. silent.Length > 0 ? [$"nothing is published on {Listing.And(silent)}"] : (string[])[],
            .. treatment.ResidualWeeks is { } weeks && days > weeks.Low * DaysInWeek
                ?
                [
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{days / DaysInWeek} weeks have gone by, and it lasts {Figures.Range(weeks)}"
                    ),
                ]
                : (string[])[],
        ];
        return why.Length == 0 ? "" : $" ({string.Join("; ", why)})";
    }

    private static string WeedsOf(PageStyle style, PastApplication past) =>
        past.Escaped.Count == 0 ? "weeds" : Listing.And([.. past.Escaped.Select(style.Names.Weed)]);

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
            FreeChemical[] good = [.. Best(free, use, most)];
            if (good.Length > 0)
                yield return Line.FromString(
                    $"{what}{(good.Length > 1 ? ", one of" : "")}: {Named(good)}.{When(style, good[0].Action, told)}"
                        + (use == FreeUse.OnComing && !isNumbered && most >= EnoughRoom ? PairOf(style) : "")
                );
        }

        FreeChemical[] little = HasRoom(style, most) ? [.. Best(free, FreeUse.Little, 1)] : [];
        if (little.Length > 0)
            yield return Line.FromString(
                $"Weak, with little gain on what is here: {Named(little)}. Better the hand, or a layer."
            );

        bool hasRoom = most >= EnoughRoom || free.All(one => one.Use == FreeUse.Poor);
        foreach (Line line in hasRoom ? RatherNot([.. free.Where(one => one.Use == FreeUse.Poor)], most) : [])
            yield return line;
    }

    /// <summary>The chemicals that are named as good for a use, the best first.</summary>
    public static IEnumerable<FreeChemical> Best(IEnumerable<FreeChemical> free, FreeUse use, int most) =>
        free.Where(one => one.Use == use).OrderBy(one => one.IsLast).Take(Math.Clamp(most, 1, AreaChemicals.MostNamed));

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

    // What is weak here is named where there is room, and where nothing better may go on.
    private static bool HasRoom(PageStyle style, int most) => most >= EnoughRoom || !style.Chemicals.IsAnyGood;

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
            .Take(ToldOf(style, most))
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
            .Against.Select(reason => style.Names.OfAny(action, reason.Said))
            .Any(text => style.Chemicals.Free.Any(one => one.Use == FreeUse.Poor && one.Against == text))
            ? " Rather not now either, for the same reason."
            : "";

    // How many groups of what waits have a line: the likely choice always, unless one as good may go on already.
    private static int ToldOf(PageStyle style, int most) =>
        Math.Min(style.Chemicals.Waiting.Length, Math.Max(style.Chemicals.IsAnyGood ? 0 : 1, most));

    /// <summary>
    /// The chemicals that the page names as what may be done, now or after an answer: those of the work, those that may
    /// go on, and the likely ones.
    /// </summary>
    public static IEnumerable<ClearAction> NamedOn(PageStyle style, AreaAdvice area, PageDetail detail)
    {
        ImmutableArray<WorkLine> shown = WorkSection.Shown(style, detail);
        HashSet<string> numbered =
        [
            .. shown.SelectMany(line => line.Others.Prepend(line.Best)).Select(one => one.Action),
            .. style.Held.Select(one => one.Action).OfType<string>(),
        ];
        FreeChemical[] free = [.. style.Chemicals.Free.Where(one => !numbered.Contains(one.Action))];
        return shown
            .SelectMany(line => WorkItem.OthersNamed(style, line).Prepend(line.Best))
            .Where(one => style.Names.IsTreatment(one.Action))
            .Concat(
                ((FreeUse[])[FreeUse.OnComing, FreeUse.OnStanding])
                    .SelectMany(use => Best(free, use, detail.Chemicals))
                    .Concat(HasRoom(style, detail.Chemicals) ? Best(free, FreeUse.Little, 1) : [])
                    .Select(one => one.Cleared)
            )
            .Concat(
                style
                    .Chemicals.Waiting.Take(ToldOf(style, detail.Waiting))
                    .Select(group => area.Waiting.First(one => one.Action == group.Actions[0]).IfClear)
                    .OfType<ClearAction>()
            )
            .Concat(detail.Chemicals < EnoughRoom ? [] : PartnerIn(style, area));
    }

    private static IEnumerable<ClearAction> PartnerIn(PageStyle style, AreaAdvice area) =>
        style.Chemicals.Pair is { } pair
            ? area
                .Clear.Concat(area.Waiting.Select(one => one.IfClear).OfType<ClearAction>())
                .Where(one => one.Action == pair.Partner)
            : [];

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
