using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;
using static WeedAdvisor.Interview.Pages.PageLines;

namespace WeedAdvisor.Interview.Pages;

/// <summary>Why an action is advised, waits or is barred: its reason tree as a page.</summary>
public static class ReasonPage
{
    /// <summary>The page.</summary>
    /// <param name="knowledge">The knowledge, for the names of things.</param>
    /// <param name="advice">The advice.</param>
    /// <param name="action">The action's id.</param>
    /// <param name="full">Whether to show every condition with what was read, not only the reasons.</param>
    public static IEnumerable<Block> Of(KnowledgeBase knowledge, AreaAdvice advice, string action, bool full)
    {
        var words = new AdviceWords(knowledge);
        var trees = new ReasonTrees(words, full);
        CatalogueAction? record = knowledge.ActionOf(action);
        return
        [
            .. record is null
                ? []
                : (Block[])[In(0, record.Name, Tone.Strong), In(0, record.WhatOn(advice.Reading.Ground))],
            .. advice
                .Clear.Where(one => one.Action == action)
                .SelectMany(one => Clear(words, trees, advice.Reading, one)),
            .. advice.Waiting.Where(one => one.Action == action).SelectMany(one => Waiting(words, trees, one)),
            .. advice.Barred.Where(one => one.Action == action).SelectMany(one => Barred(words, trees, one)),
            .. advice.NotAdvised.Where(one => one.Action == action).SelectMany(one => NotAdvised(trees, one)),
            .. advice.Conflicts.Where(one => one.Action == action).SelectMany(Conflict),
            .. Cautions(record, advice, action),
        ];
    }

    private static IEnumerable<Block> Clear(
        AdviceWords words,
        ReasonTrees trees,
        AreaReading reading,
        ClearAction action
    ) =>
        [
            .. Head($"Why: {ActionStatuses.Text(action.Status)} here, number {action.Rank}"),
            In(0, words.Figures(action, reading)),
            .. action.Effect.Parts.Select(part => In(4, EffectOn(words, part), Tone.Muted)),
            .. action.Unless.Select(need => Marked("? ", words.Need(need))),
            .. trees.Of(action.Doubts.Where(doubt => !doubt.IsCertain)),
            .. trees.Of(action.Because),
            .. Sources(words, action.Sources),
        ];

    private static string EffectOn(AdviceWords words, EffectPart part)
    {
        string figure = part is { LowPercent: { } low, HighPercent: { } high }
            ? $"{Answering.Number(low)} to {Answering.Number(high)} % fewer"
            : "no published figure";
        return $"{Answering.WeedName(words.Knowledge, part.Weed)}: {figure}";
    }

    private static IEnumerable<Block> Waiting(AdviceWords words, ReasonTrees trees, WaitingAction action) =>
        [
            .. Head("Why it waits: these answers are missing"),
            .. action.Needs.Select(need => Marked("? ", words.Need(need))),
            .. trees.Of(action.Because),
        ];

    private static IEnumerable<Block> Barred(AdviceWords words, ReasonTrees trees, BarredAction action) =>
        [
            .. Head($"Why not: {StatusWords.Of(action)}, {StatusWords.Of(action.Severity)} here"),
            .. trees.Of(action.Because),
            .. Sources(words, action.Sources),
        ];

    private static IEnumerable<Block> NotAdvised(ReasonTrees trees, NotAdvisedAction action) =>
        [
            .. Head("Why not advised"),
            In(0, action.For.IsEmpty ? "Nothing speaks for it here." : "What speaks against it weighs more."),
            .. trees.Of(action.Against.Concat(action.For)),
        ];

    private static IEnumerable<Block> Conflict(Conflict conflict) =>
        [
            .. Head("Rules argue both ways"),
            .. conflict.For.Select(reason => In(2, "For: " + reason.Text)),
            .. conflict.Against.Select(reason => In(2, "Against: " + reason.Text)),
        ];

    private static IEnumerable<Block> Cautions(CatalogueAction? record, AreaAdvice advice, string action)
    {
        ImmutableArray<ActionCaution> cautions = advice.Clear.FirstOrDefault(one => one.Action == action)?.Cautions
            ?? [.. (record?.Cautions ?? []).Select(text => new ActionCaution(text, null, true))];
        bool isChemical = record is Treatment;
        return cautions.IsEmpty && !isChemical
            ? []
            :
            [
                .. Head("Cautions"),
                .. cautions.Select(caution =>
                    Marked("! ", caution.IsCertain ? caution.Text : "Possibly: " + caution.Text, Tone.Warning)
                ),
                .. isChemical ? Safety.StandingLines.Select(line => Marked("! ", line, Tone.Warning)) : [],
            ];
    }

    private static IEnumerable<Block> Sources(AdviceWords words, ImmutableArray<string> keys) =>
        keys.IsEmpty
            ? []
            :
            [
                .. Head("Sources"),
                .. keys.Select(key =>
                    new Hanging(
                        Line.FromString(
                            words.Knowledge.Sources.TryGetValue(key, out Source? source) ? source.Citation : key
                        ) with
                        {
                            Tone = Tone.Muted,
                        }
                    ).At(2)
                ),
            ];
}
