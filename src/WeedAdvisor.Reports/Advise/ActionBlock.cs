using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Dates;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>One clear action: how good it is, what it costs, what speaks for it, what to mind.</summary>
internal static class ActionBlock
{
    private const int MostReasons = 2;
    private const int Left = 6;

    public static IEnumerable<Block> Of(
        Names names,
        DateOnly day,
        ClearAction action,
        AreaReading reading,
        ActionDates? dates,
        SharedCautions shared
    )
    {
        string status = action.Status == ActionStatus.Clear ? "" : $", {StatusWords.Of(action, names.NeedInShort)}";
        Line head = Line.Of($"{new Named(names.Action(action.Action))} ({action.Action}){status}");
        yield return new Blank();
        yield return new ItemList([
            new Item(Item.Rank(action.Rank), head with { Action = action.Action, Tone = Tone.Strong })
            {
                Below =
                [
                    .. Below(names, day, action, reading, dates, shared)
                        .Select(block => block is Keyed keyed ? keyed.About(action.Action) : block)
                        .Select(block => block.At(Left)),
                ],
            },
        ]);
    }

    private static IEnumerable<Block> Below(
        Names names,
        DateOnly day,
        ClearAction action,
        AreaReading reading,
        ActionDates? dates,
        SharedCautions shared
    )
    {
        CatalogueAction? record = names.Record(action.Action);
        if (record is not null)
            yield return new Paragraph(record.WhatOn(reading.Ground));
        yield return new Paragraph(Figures.Worth(action));
        if (StatusWords.Unless(action, names.NeedInShort) is { } unless)
            yield return new Keyed("clear unless: ", Line.FromString(unless) with { Tone = Tone.Warning });
        yield return new Paragraph(EffectLine(names, action.Effect));
        if (names.Cost(action.Action, reading) is { } cost)
            yield return new Paragraph(Line.Of($"Cost: {Costs.Of(cost)}"));
        foreach (Line date in DateLines.Of(dates, day))
            yield return new Paragraph(date);
        foreach (
            Block block in DayLine
                .Of(action)
                .Concat(Reasons(action))
                .Concat(Cautions(names, day, action, record, shared))
        )
            yield return block;
    }

    private static Line EffectLine(Names names, Effect effect)
    {
        if (effect.Parts.IsEmpty)
            return "Effect: no weeds to count it on";
        string parts = string.Join("; ", effect.Parts.Select(part => Part(names, part)));
        return effect.Reduction is { } reduction
            ? Line.Of($"Effect: about {Amounts.Percent(reduction)} fewer of the weeds seen ({parts})")
            : $"Effect: no published figure for "
                + $"{string.Join(", ", effect.Parts.Select(part => names.Weed(part.Weed)))}";
    }

    private static string Part(Names names, EffectPart part) =>
        part is { LowPercent: { } low, HighPercent: { } high }
            ? $"{names.Weed(part.Weed)} {Figures.Range(low, high)} %{Figures.Keys(part.Sources)}"
            : $"{names.Weed(part.Weed)} no figure";

    private static IEnumerable<Block> Reasons(ClearAction action) =>
        [
            .. Strongest("for: ", action.Because.Where(reason => !IsDoubt(reason))),
            .. Strongest("against: ", action.Because.Where(IsDoubt)),
            new Keyed("why: ", string.Join(", ", action.Because.Select(reason => reason.Judgement).Distinct())),
        ];

    private static IEnumerable<Block> Strongest(string mark, IEnumerable<Reason> reasons) =>
        reasons
            .DistinctBy(reason => reason.Text)
            .Take(MostReasons)
            .Select(reason => new Keyed(
                mark,
                $"{Names.UnderItsName(reason.Said)} ({Figures.Strength(reason)}){Figures.Keys(reason.Sources)}"
            ));

    private static IEnumerable<Block> Cautions(
        Names names,
        DateOnly day,
        ClearAction action,
        CatalogueAction? record,
        SharedCautions shared
    )
    {
        foreach (string where in names.NotWhere(action.Action))
            yield return new Keyed("not where: ", Figures.Sentence(where));
        foreach (ActionCaution caution in action.Cautions.Where(one => !shared.Holds(action, one)))
        {
            yield return Warning(
                caution.IsCertain ? "mind: " : "mind, if it applies: ",
                Names.UnderItsName(caution.Said)
            );
        }

        if (names.Treatment(action.Action) is { } treatment)
            yield return Warning("label first: ", string.Join("; ", Safety.LinesFor(names, treatment, day)));
        else if (record is not null && Safety.ToConfirm(record) is { IsEmpty: false } fields)
            yield return new Keyed("from memory: ", string.Join(", ", fields.Select(Names.Field)));
    }

    private static Keyed Warning(string mark, string text) =>
        new(mark, Line.FromString(text) with { Tone = Tone.Warning });

    private static bool IsDoubt(Reason reason) => reason.Then is Consequence.Argument { IsDoubt: true };
}
