using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;
using static WeedAdvisor.Interview.Pages.PageLines;

namespace WeedAdvisor.Interview.Pages;

/// <summary>The advice for an area on a page beside the questions: short lines, each action to be opened.</summary>
public static class AdvicePage
{
    /// <summary>The page.</summary>
    /// <param name="knowledge">The knowledge, for the names of things.</param>
    /// <param name="advice">The advice.</param>
    /// <param name="next">The question that is put next, or null.</param>
    /// <param name="full">Whether to name every action that merely does not suit the place, and every caution that only
    /// may apply.</param>
    /// <param name="current">The question on screen, which need not be told again; null when there is none.</param>
    public static IEnumerable<Block> Of(
        KnowledgeBase knowledge,
        AreaAdvice advice,
        Question? next,
        bool full,
        Question? current = null
    )
    {
        var words = new AdviceWords(knowledge);
        return
        [
            .. LiftedBars.Of(knowledge.Stamp),
            .. KeepOut(words, advice),
            .. People(advice),
            .. ComingWords.Of(advice.Reading.Coming, weed => knowledge.Weeds[weed].Name) is { } coming
                ? (Block[])[In(0, coming)]
                : [],
            .. Next(words, advice, next, current),
            .. ActionGroup.Of(advice).SelectMany(group => Clear(words, advice.Reading, group)),
            .. HeldPart.Of(knowledge, advice),
            .. Findings(advice),
            .. Cautions(advice, full),
            .. Waiting(words, advice),
            .. Possible(words, advice),
            .. BarredPart.Of(words, advice, full),
            .. NotAdvised(words, advice),
            .. advice.Gaps.IsEmpty ? [] : Head("What no rule could judge"),
            .. advice.Gaps.Select(gap => In(2, gap.Text)),
            .. Safety.NamesTreatment(advice, knowledge) ? Chemicals() : [],
        ];
    }

    // Whoever reads only the first lines must read this.
    private static IEnumerable<Block> KeepOut(AdviceWords words, AreaAdvice advice) =>
        advice.KeepOut is not { } keepOut
            ? []
            :
            [
                .. Head($"Keep out {UntilWords.KeepOut(keepOut)}"),
                .. keepOut.Because.Select(reason => Marked("! ", reason, Tone.Warning)),
                .. keepOut.Needs.Select(need => Marked("? ", words.Need(need))),
                .. keepOut.Then.IsEmpty ? [] : (Block[])[In(2, "From then, best first:")],
                .. keepOut.Then.Select(action => Marked("  - ", words.Name(action), action: action)),
            ];

    // What keeps somebody from being hurt stands before all work.
    private static IEnumerable<Block> People(AreaAdvice advice)
    {
        AreaCaution[] told = [.. advice.Cautions.Where(caution => caution.IsCertain && IsOfPeople(caution))];
        return told.Length == 0
            ? []
            : [.. Head("Before anybody starts"), .. told.Select(caution => Marked("! ", caution.Text, Tone.Warning))];
    }

    private static bool IsOfPeople(AreaCaution caution) =>
        caution.Because.Then is Consequence.Caution { StandsFirst: true };

    private static IEnumerable<Block> Next(AdviceWords words, AreaAdvice advice, Question? next, Question? current)
    {
        foreach (Block block in Head("Next question"))
            yield return block;
        if (next is null)
        {
            yield return In(
                2,
                advice.NextQuestion is null
                    ? "None: no open answer would change the advice."
                    : "None new: what is left was passed over or is not known."
            );
            yield break;
        }

        yield return In(2, next.Id == current?.Id ? "The one on this page." : next.Ask);
        if (advice.NextQuestion is not { } best || best.Id != next.Id)
            yield break;
        ImmutableArray<string> outcomes = OutcomeWords.Of(new Names(words.Knowledge), best);
        foreach (string outcome in outcomes)
            yield return In(2, outcome, Tone.Muted);
        if (outcomes.IsEmpty && best.MayBring is [var first, ..])
            yield return In(2, $"It may bring: {words.Name(first)}.", Tone.Muted);
    }

    private static IEnumerable<Block> Clear(AdviceWords words, AreaReading reading, ActionGroup group) =>
        [
            .. Head(Horizons.Title(group.Horizon)),
            .. group.Lines.SelectMany(line =>
                Clear(words, reading, line.Best).Concat(line.Others.Select(other => Or(words, other)))
            ),
        ];

    private static Block Or(AdviceWords words, ClearAction other) =>
        Marked("   or ", words.Name(other.Action), action: other.Action);

    private static IEnumerable<Block> Clear(AdviceWords words, AreaReading reading, ClearAction action)
    {
        string id = action.Action;
        yield return Marked(
            action.Rank.ToString(CultureInfo.InvariantCulture).PadLeft(2) + " ",
            words.Name(id),
            action: id
        );
        yield return In(3, words.Figures(action, reading), Tone.Muted, id);
        if (StatusWords.Unless(action, words.Need) is { } unless)
            yield return In(3, $"clear unless: {unless}", Tone.Warning, id);
        if (words.IsChemical(id))
            yield return In(3, "chemical: the label comes first", Tone.Warning, id);
    }

    private static IEnumerable<Block> Findings(AreaAdvice advice)
    {
        AreaFinding[] certain = [.. advice.Findings.Where(finding => finding.IsCertain)];
        int possible = advice.Findings.Length - certain.Length;
        return certain.Length == 0
            ? []
            :
            [
                .. Head("What was found"),
                .. certain.Select(finding => In(2, $"{finding.Text}{HowSure(finding)}")),
                .. possible > 0
                    ? [In(2, $"{possible} more may hold; they wait for answers.", Tone.Muted)]
                    : (Block[])[],
            ];
    }

    // What is certain needs no word; the rest as the cases of actions are told.
    private static string HowSure(AreaFinding finding) =>
        finding.Certainty < 1 ? $" ({Figures.CaseWord(finding.Certainty)} case)" : "";

    private static IEnumerable<Block> Cautions(AreaAdvice advice, bool full)
    {
        AreaCaution[] all = [.. advice.Cautions.Where(caution => !(caution.IsCertain && IsOfPeople(caution)))];
        AreaCaution[] told = [.. all.Where(caution => caution.IsCertain || full)];
        int untold = all.Length - told.Length;
        return all.Length == 0
            ? []
            :
            [
                .. Head("Cautions"),
                .. told.Select(caution =>
                    Marked("! ", caution.IsCertain ? caution.Text : "Possibly: " + caution.Text, Tone.Warning)
                ),
                .. untold > 0 ? [In(2, $"{untold} more may apply; Space names them.", Tone.Muted)] : (Block[])[],
            ];
    }

    private static IEnumerable<Block> Chemicals() =>
        [.. Head("Before any chemical"), .. Safety.StandingLines.Select(line => Marked("! ", line, Tone.Warning))];

    // What waits for least stands first: it is nearest to being settled.
    private static IEnumerable<Block> Waiting(AdviceWords words, AreaAdvice advice) =>
        advice.Waiting.IsEmpty
            ? []
            :
            [
                .. Head($"Waiting for an answer ({advice.Waiting.Length})"),
                .. advice.Waiting.SelectMany(action => Waiting(words, action)),
            ];

    private static IEnumerable<Block> Waiting(AdviceWords words, WaitingAction action)
    {
        yield return Marked("? ", words.Name(action.Action), action: action.Action);
        if (action.Needs is not [var first, .. var others])
            yield break;
        string more = others.IsEmpty ? "" : $" and {others.Length} more";
        yield return In(4, words.Need(first) + more, Tone.Muted, action.Action);
    }

    private static IEnumerable<Block> Possible(AdviceWords words, AreaAdvice advice)
    {
        BarredAction[] actions =
        [
            .. BecomingPossible.Of(advice).Where(action => advice.KeepOut?.Then.Contains(action.Action) != true),
        ];
        return actions.Length == 0
            ? []
            :
            [
                .. Head($"What becomes possible, and when ({actions.Length})"),
                .. actions.SelectMany(action =>
                    (Block[])
                        [
                            In(2, words.Name(action.Action), action: action.Action),
                            In(4, UntilWords.From(action.Until!), Tone.Muted, action.Action),
                        ]
                ),
            ];
    }

    private static IEnumerable<Block> NotAdvised(AdviceWords words, AreaAdvice advice)
    {
        NotAdvisedAction[] outweighed = [.. advice.NotAdvised.Where(action => !action.For.IsEmpty)];
        return outweighed.Length == 0
            ? []
            :
            [
                .. Head($"Not advised: more speaks against ({outweighed.Length})"),
                .. outweighed.Select(action => Marked("- ", words.Name(action.Action), action: action.Action)),
            ];
    }
}
