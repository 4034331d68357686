using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>What stands below the work on the page of an area.</summary>
internal static class PageTail
{
    private const int MostNames = 3;

    /// <summary>What to ask next, if there is room what for, and how much is open.</summary>
    public static IEnumerable<Block> Ask(PageStyle style, AreaAdvice area, bool whatFor, int waitingTold)
    {
        if (area.NextQuestion is not { } next)
            yield break;
        yield return Heading.Section("Ask next");
        string[] notYet =
        [
            .. next.MayBring.Where(action => area.Clear.All(one => one.Action != action)).Select(style.Names.Action),
        ];
        string brings =
            !whatFor ? ""
            : OutcomeWords.OfChanges(style.Names, next) is { IsEmpty: false } outcomes
                ? " " + string.Join(" ", outcomes)
            : !next.Outcomes.IsEmpty || notYet.Length == 0 ? ""
            : $" The answer may bring: {Listing.Some(notYet, MostNames)}.";
        yield return new Paragraph($"{next.Text}{brings}").At(2);
        if (whatFor && waitingTold == 0 && Undecided(style, area) is { Length: > 0 } open)
            yield return new Paragraph($"Once more is told, perhaps: {open}.").At(2);
    }

    // By name, what may be called for most first: a bare number tells nobody what is to come.
    private static string Undecided(PageStyle style, AreaAdvice area) =>
        string.Join(
            "; ",
            (string[])
                [
                    .. area
                        .Waiting.Where(one => !style.Names.IsTreatment(one.Action))
                        .OrderBy(one => one.Horizon > Horizon.ThisSeason)
                        .ThenBy(one => one.Horizon == Horizon.Habit)
                        .ThenByDescending(one => Math.Round(one.Promise, 9))
                        .ThenByDescending(one => one.IfClear?.Certainty ?? 0)
                        .Select(one => style.Names.Action(one.Action))
                        .Take(MostNames),
                ]
        );

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

    /// <summary>
    /// On a clean area, by when what stops weeds must lie there, and why waiting for them is too late; where no day is
    /// known and there is room, what to mind says it at length.
    /// </summary>
    public static IEnumerable<Block> InTime(PageStyle style, int most)
    {
        if (!style.IsClean)
            yield break;
        if (style.PreventBy.Length > 0)
            yield return new Paragraph(
                Line.FromString($"Prevention comes first here. {Figures.Sentence(style.PreventBy)}.") with
                {
                    Tone = Tone.Strong,
                }
            ).At(2);
        else if (most == 0)
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

    /// <summary>What keeps somebody from being hurt here, or a season's plants from being lost: never cut.</summary>
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
        int left = sure.Length - shown;
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
        caution.Because.Then is Consequence.Caution { StandsFirst: true };

    private static Item ItemOf(PageStyle style, AreaCaution caution) =>
        new(
            Item.Dash,
            Line.FromString(Figures.Sentence(caution.Text) + style.Keys(caution.Because.Sources)) with
            {
                Tone = Tone.Warning,
            }
        );

    /// <summary>What practices wait for an answer, what would become of them, and why.</summary>
    public static IEnumerable<Block> Waiting(PageStyle style, AreaAdvice area, int most)
    {
        ImmutableArray<WaitingAction> practices = [.. area.Waiting.Where(one => !style.Names.IsTreatment(one.Action))];
        if (practices.IsEmpty || most == 0)
            yield break;
        yield return Heading.Section(
            $"What waits for an answer: {style.Names.CountActions([.. practices.Select(one => one.Action)])}"
        );
        yield return new ItemList([
            .. WaitingGroup
                .InOrderOfWork(style.Names, practices)
                .Take(most)
                .Select(group => new Item(
                    Item.Dash,
                    Line.FromString(WaitingWords.Of(style.Names, area, group, MostNames))
                )),
        ]).At(2);
    }
}
