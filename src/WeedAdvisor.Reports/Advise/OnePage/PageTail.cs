using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>What stands below the work on the page of an area.</summary>
internal static class PageTail
{
    private const int MostNames = 3;

    /// <summary>What to ask next and, if there is room, what for.</summary>
    public static IEnumerable<Block> Ask(PageStyle style, AreaAdvice area, bool whatFor)
    {
        if (area.NextQuestion is not { } next)
            yield break;
        yield return Heading.Section("Ask next");
        string brings =
            next.MayBring.IsEmpty || !whatFor
                ? ""
                : $" The answer may bring: {Listing.Some([.. next.MayBring.Select(style.Names.Action)], MostNames)}.";
        yield return new Paragraph($"{next.Text} ({next.Id}){brings}").At(2);
    }

    /// <summary>Answers that contradict each other: nothing else is sound before they are settled.</summary>
    public static IEnumerable<Block> Contradictions(AreaAdvice area) =>
        area
            .Gaps.Where(gap => gap.Kind == GapKind.Contradiction)
            .Select(gap => new Paragraph(Line.FromString(gap.Text) with { Tone = Tone.Warning }).At(2));

    /// <summary>Weeds that nothing clear has a figure against: what is left to how they live.</summary>
    public static IEnumerable<Block> Left(AreaAdvice area, int most) =>
        area
            .Gaps.Where(gap => gap.Kind == GapKind.WeedWithoutAnswer)
            .Take(most)
            .Select(gap => new Paragraph(gap.Text).At(2));

    /// <summary>What becomes possible, and when.</summary>
    public static IEnumerable<Block> Later(PageStyle style, AreaAdvice area, int most)
    {
        Item[] lines =
        [
            .. BecomingPossible
                .Lines(area, style.Day)
                .Take(most)
                .Select(line => new Item(
                    Item.Dash,
                    Line.FromString(
                        $"{line.When}: {Listing.Some([.. line.Actions.Select(style.Names.Action)], MostNames)}"
                    )
                )),
        ];
        return lines.Length == 0
            ? []
            : [Heading.Section("What becomes possible, and when"), new ItemList([.. lines]).At(2)];
    }

    /// <summary>
    /// On a clean area, why waiting for weeds is too late; where there is room, what to mind says it at length.
    /// </summary>
    public static IEnumerable<Block> InTime(AreaAdvice area, int most)
    {
        bool isClean = area.Area.Weeds is { } weeds && weeds.All(seen => seen.IsUp == false);
        if (most == 0 && isClean && !area.Reading.Coming.Weeds.IsEmpty)
            yield return new Paragraph("What stops weeds must lie there before they show: later it is too late.").At(2);
    }

    /// <summary>The weeds that nothing meets for now, and why: those left for one reason in one sentence.</summary>
    public static IEnumerable<Block> NotMet(PageStyle style, AreaAdvice area)
    {
        Gap[] left = [.. area.Gaps.Where(gap => gap.Kind == GapKind.WeedLeft)];
        if (left.Length == 0)
            yield break;
        yield return new Blank();
        yield return ItemList
            .Dashes(left.GroupBy(gap => gap.Held is null).Select(alike => LineOfLeft(style, [.. alike])))
            .At(2);
    }

    private static Line LineOfLeft(PageStyle style, Gap[] alike)
    {
        if (alike is [var only])
            return Line.FromString(only.Text);
        string weeds = Listing.And([.. alike.Select(gap => style.Names.Weed(gap.Subject!))]);
        string[] held = [.. alike.Select(gap => gap.Held).OfType<string>().Distinct(StringComparer.Ordinal)];
        return Line.FromString(
            held.Length == 0
                ? $"Left for now: {weeds}. Nothing that is known against them can be done in a place like this."
                : $"Left for now: {weeds}. What would meet them may not be done here yet: "
                    + $"{string.Join("; ", held.Select(style.Names.Action))}."
        );
    }

    /// <summary>What keeps somebody from being hurt here: never cut.</summary>
    public static IEnumerable<Block> People(PageStyle style, AreaAdvice area)
    {
        Item[] items =
        [
            .. area
                .Cautions.Where(caution => caution.IsCertain && IsOfPeople(caution))
                .Select(caution => ItemOf(style, caution)),
        ];
        return items.Length == 0 ? [] : [Heading.Section("Before anybody starts"), new ItemList([.. items]).At(2)];
    }

    /// <summary>What else to mind in the whole area.</summary>
    public static IEnumerable<Block> Mind(PageStyle style, AreaAdvice area, int most)
    {
        AreaCaution[] sure = [.. area.Cautions.Where(caution => caution.IsCertain && !IsOfPeople(caution))];
        int shown = Math.Min(most, sure.Length);
        int left = area.Cautions.Count(caution => !(caution.IsCertain && IsOfPeople(caution))) - shown;
        if (shown > 0)
            yield return Heading.Section("Mind here");
        if (shown + left > 0)
            yield return new ItemList([
                .. sure.Take(shown).Select(caution => ItemOf(style, caution)),
                .. left > 0
                    ?
                    [
                        new Item(
                            Item.Open,
                            $"{Figures.Count(left, "more thing", "more things")} to mind here: '--full'."
                        ),
                    ]
                    : (Item[])[],
            ]).At(2);
    }

    private static bool IsOfPeople(AreaCaution caution) =>
        caution.Because.Then is Consequence.Caution { ProtectsPeople: true };

    private static Item ItemOf(PageStyle style, AreaCaution caution) =>
        new(
            Item.Dash,
            Line.FromString(Figures.Sentence(caution.Text) + style.Keys(caution.Because.Sources)) with
            {
                Tone = Tone.Warning,
            }
        );

    /// <summary>What waits for an answer, what would become of it, and why.</summary>
    public static IEnumerable<Block> Waiting(PageStyle style, AreaAdvice area, int most)
    {
        if (area.Waiting.IsEmpty)
            yield break;
        string heading =
            $"What waits for an answer: {style.Names.CountActions([.. area.Waiting.Select(one => one.Action)])}";
        if (most == 0)
        {
            yield return new Paragraph(heading).At(2);
            yield break;
        }

        yield return Heading.Section(heading);
        yield return new ItemList([
            .. WaitingGroup
                .InOrderOfWork(style.Names, area.Waiting)
                .Take(most)
                .Select(group => new Item(
                    Item.Dash,
                    Line.FromString(WaitingWords.Of(style.Names, area, group, MostNames))
                )),
        ]).At(2);
    }

    /// <summary>What must not be used here: counted, with the reasons that bar most.</summary>
    public static IEnumerable<Block> Barred(PageStyle style, AreaAdvice area, int most)
    {
        int chemicals = area.Barred.Count(one => style.Names.IsTreatment(one.Action));
        if (chemicals == 0)
            yield break;
        yield return new Blank();
        yield return new Paragraph(
            $"Barred here: {Chemicals(chemicals)}; 'why VISIT NAME' says why and until when."
        ).At(2);
        yield return new ItemList([
            .. style
                .Bars.Take(most)
                .Select(group => new Item(
                    Item.Dash,
                    $"{Chemicals(group.Actions.Length)}: {group.Text}{style.Keys(group.Sources)}"
                )),
        ]).At(2);
    }

    private static string Chemicals(int count) => Figures.Count(count, "chemical", "chemicals");
}
