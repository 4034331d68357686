using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Planning.Dates;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>One line of work on the page.</summary>
internal static class WorkItem
{
    /// <summary>What stands before what the label says.</summary>
    public const string LabelFirst = "label first: ";

    private const string Mind = "mind: ";
    private const int Left = 5;
    private const int MostOthers = 3;
    private const int LeastShared = 2;

    /// <summary>The line with as much below it as is told.</summary>
    public static Item Of(
        PageStyle style,
        AreaAdvice area,
        WorkLine line,
        int number,
        Telling telling,
        int cautions,
        ToldOnce told
    )
    {
        IEnumerable<Block> below = telling switch
        {
            Telling.WhatAndWhy =>
            [
                .. What(style, area, line.Best),
                .. Facts(style, area, line.Best),
                .. Why(style, line.Best, told),
                .. Cautions(style, line.Best, cautions),
                .. LabelOf(style, line.Best),
                .. Others(style, line),
            ],
            Telling.Why =>
            [
                .. Pressing(style, line.Best),
                .. Why(style, line.Best, told),
                .. Cautions(style, line.Best, 0),
            ],
            _ => [.. Pressing(style, line.Best), .. Unless(style, line.Best, told).Take(1)],
        };
        return new Item(Item.Rank(number), Head(style, line, telling))
        {
            Below =
            [
                .. told.OnlyNew(below)
                    .Select(block => block is Keyed keyed ? keyed.About(line.Best.Action) : block)
                    .Select(block => block.At(Left)),
            ],
        };
    }

    /// <summary>What is never cut of a chemical: what its record and its label say of handling it.</summary>
    public static IEnumerable<Block> LabelOf(PageStyle style, ClearAction action)
    {
        if (style.Names.Treatment(action.Action) is not { } treatment)
            yield break;
        if (treatment.Label is { } own)
            yield return Warning(LabelFirst, own.Line(style.Day));
        yield return Warning(LabelFirst, string.Join("; ", Safety.BriefLinesFor(style.Names, treatment, style.Day)));
    }

    private static Line Head(PageStyle style, WorkLine line, Telling telling)
    {
        Line after = telling == Telling.WhatAndWhy || line.Others.IsEmpty ? "" : $" (or {OthersIn(style, line)})";
        string state = string.Concat(States(line.Best).Select(state => $", {state}"));
        return Line.Of($"{new Named(style.Names.Action(line.Best.Action))}{state}{after}") with
        {
            Action = line.Best.Action,
            Tone = Tone.Strong,
        };
    }

    private static IEnumerable<string> States(ClearAction action)
    {
        if (action.WaitsForCleaning)
            yield return "once the weeds are off";
        if (action.LacksTool)
            yield return "none of its tools is here";
    }

    private static IEnumerable<Block> What(PageStyle style, AreaAdvice area, ClearAction action)
    {
        if (style.Names.Record(action.Action) is { } record)
            yield return new Paragraph(FirstSentence(record.WhatOn(area.Reading.Ground)));
    }

    // What presses, how good it is and, where the pots are told, what it takes.
    private static IEnumerable<Block> Facts(PageStyle style, AreaAdvice area, ClearAction action)
    {
        string good = action.Effect.Reduction is null
            ? ""
            : Figures.Sentence(EffectWords.Of(action)) + NoFigureFor(style, action);
        string cost = Costs.ForArea(style.Names.Cost(action.Action, area.Reading))?.Text ?? "";
        string facts = string.Join("; ", new[] { good, cost }.Where(text => text.Length > 0));
        if (facts.Length > 0)
            yield return new Paragraph($"{Figures.Sentence(facts)}.");
        foreach (Block block in Pressing(style, action))
            yield return block;
    }

    private static IEnumerable<Block> Pressing(PageStyle style, ClearAction action)
    {
        ActionDates? dates = style.Names.Dates(action, style.Reading, style.Day);
        return
        [
            .. DateLines
                .Of(dates, style.Day, isToday: action.Horizon == Horizon.Today)
                .Where(line => !(style.IsClean && line.ToString() == style.PreventBy))
                .Take(style.Names.IsTreatment(action.Action) ? 2 : 1)
                .Select(line => new Paragraph(line)),
            .. DayLine.Of(action),
        ];
    }

    private static string NoFigureFor(PageStyle style, ClearAction action)
    {
        string[] silent =
        [
            .. action.Effect.Parts.Where(part => part.LowPercent is null).Select(part => style.Names.Weed(part.Weed)),
        ];
        return silent.Length == 0 ? "" : $" (no figure for {Listing.And(silent)})";
    }

    private static IEnumerable<Block> Why(PageStyle style, ClearAction action, ToldOnce told)
    {
        foreach (Block block in Unless(style, action, told))
            yield return block;
        if (Strongest(style, action, isDoubt: false) is { } reason)
            yield return new Keyed("why: ", Names.UnderItsName(reason.Said) + style.Keys(reason.Sources));
        if (Strongest(style, action, isDoubt: true) is { } against)
            yield return new Keyed("but: ", Names.UnderItsName(against.Said) + style.Keys(against.Sources));
    }

    // Who reads no more than the name must see what could still stand against it, and what settles that.
    private static IEnumerable<Block> Unless(PageStyle style, ClearAction action, ToldOnce told)
    {
        if (action.Status == ActionStatus.Clear || told.HasAsked(action))
            yield break;
        if (StatusWords.DoubtOf(action) is { } doubt)
            yield return Warning("unless: ", Names.UnderItsName(doubt));
        if (!action.Unless.IsEmpty)
            yield return new Keyed("ask: ", string.Join(" ", style.Names.QuestionsOf(action.Unless)));
    }

    // What keeps somebody from being hurt is told whatever the room.
    private static IEnumerable<Block> Cautions(PageStyle style, ClearAction action, int most)
    {
        // What decides over a chemical stands below all chemicals, once for all that share it.
        bool isChemical = style.Names.IsTreatment(action.Action);
        ImmutableArray<ActionCaution> all = CautionsInOrder.Of(
            action.Cautions.Where(caution => !(isChemical && caution.Decides))
        );
        int shown = CautionsInOrder.Shown(all, most);
        foreach (ActionCaution caution in all.Take(shown))
            yield return Warning(Mind, Names.UnderItsName(caution.Said));
        int left = all.Length - shown;
        if (left > 0 && most > 0 && !isChemical)
            yield return new Keyed(Mind, $"{Figures.Count(left, "more thing", "more things")}");
    }

    private static IEnumerable<Block> Others(PageStyle style, WorkLine line)
    {
        if (OthersIn(style, line) is { Length: > 0 } others)
            yield return new Keyed("or: ", others);
    }

    private static string OthersIn(PageStyle style, WorkLine line) =>
        string.Join(
            "; ",
            OthersNamed(style, line)
                .Select(other => Briefly(style.Names.Action(line.Best.Action), style.Names.Action(other.Action)))
        );

    /// <summary>
    /// What else does the job of a line, as far as it is named: of chemicals one, for each is told with what decides
    /// over it.
    /// </summary>
    public static IEnumerable<ClearAction> OthersNamed(PageStyle style, WorkLine line) =>
        line
            .Others.Where(one => !style.Names.IsTreatment(one.Action))
            .Take(MostOthers)
            .Concat(line.Others.Where(one => style.Names.IsTreatment(one.Action)).Take(1))
            .OrderBy(one => line.Others.IndexOf(one));

    // "Cover with" need not be read four times.
    private static string Briefly(string best, string other)
    {
        string[] words = other.Split(' ');
        int shared = best.Split(' ').Zip(words).TakeWhile(pair => pair.First == pair.Second).Count();
        string rest = string.Join(' ', words.Skip(shared));
        return shared >= LeastShared && rest.Length > 0 && char.IsAsciiLetter(rest[0]) ? rest : other;
    }

    private static Reason? Strongest(PageStyle style, ClearAction action, bool isDoubt) =>
        ReasonsInOrder
            .Of(
                action.Because.Where(reason =>
                    reason.Then is Consequence.Argument { AfterCleaning: false } one && one.IsDoubt == isDoubt
                ),
                ReasonsInOrder.WeedsOf(style.Names, style.Area)
            )
            .FirstOrDefault();

    private static Keyed Warning(string mark, string text) =>
        new(mark, Line.FromString(text) with { Tone = Tone.Warning });

    private static string FirstSentence(string text)
    {
        int end = text.IndexOf(". ", StringComparison.Ordinal);
        return end < 0 ? text : text[..(end + 1)];
    }
}
