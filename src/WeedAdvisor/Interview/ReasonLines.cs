using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Interview;

/// <summary>Why an action is advised, waits or is barred: its reason tree as lines of a given width.</summary>
public sealed class ReasonLines
{
    private readonly KnowledgeBase _knowledge;
    private readonly int _width;
    private readonly List<AdviceLine> _lines = [];

    private ReasonLines(KnowledgeBase knowledge, int width)
    {
        _knowledge = knowledge;
        _width = width;
    }

    /// <summary>The reasons of one action in lines.</summary>
    /// <param name="knowledge">The knowledge, for the names of things.</param>
    /// <param name="advice">The advice.</param>
    /// <param name="action">The action's id.</param>
    /// <param name="width">Columns.</param>
    /// <param name="full">Whether to show every condition with what was read, not only the reasons.</param>
    public static ImmutableArray<AdviceLine> Of(
        KnowledgeBase knowledge, AreaAdvice advice, string action, int width, bool full)
    {
        var lines = new ReasonLines(knowledge, width);
        lines.Record(knowledge.ActionOf(action));
        if (advice.Clear.FirstOrDefault(a => a.Action == action) is { } clear)
            lines.Clear(clear, full);
        if (advice.Waiting.FirstOrDefault(a => a.Action == action) is { } waiting)
            lines.Waiting(waiting, full);
        if (advice.Barred.FirstOrDefault(a => a.Action == action) is { } barred)
            lines.Barred(barred, full);
        if (advice.NotAdvised.FirstOrDefault(a => a.Action == action) is { } notAdvised)
            lines.NotAdvised(notAdvised, full);
        lines.Conflict(advice.Conflicts.FirstOrDefault(c => c.Action == action));
        lines.RecordCautions(knowledge.ActionOf(action), advice, action);
        return [.. lines._lines];
    }

    private void Record(CatalogueAction? record)
    {
        if (record is null)
            return;
        Text(record.Name, LineTone.Heading);
        Text(record.What);
    }

    private void Clear(ClearAction action, bool full)
    {
        Heading($"Why: {ActionStatuses.Text(action.Status)} here, number {action.Rank}");
        Text(AdviceLines.Figures(action));
        foreach (EffectPart part in action.Effect.Parts)
        {
            string figure = part is { LowPercent: { } low, HighPercent: { } high }
                ? $"{Answering.Number(low)} to {Answering.Number(high)} % fewer"
                : "no published figure";
            Text($"{Answering.WeedName(_knowledge, part.Weed)}: {figure}", LineTone.Quiet, "    ");
        }

        foreach (Need need in action.Unless)
            Text(AdviceLines.NeedText(_knowledge, need), LineTone.Plain, "? ");
        Reasons(action.Doubts.Where(doubt => !doubt.IsCertain), full);
        Reasons(action.Because, full);
        Sources(action.Sources);
    }

    private void Waiting(WaitingAction action, bool full)
    {
        Heading("Why it waits: these answers are missing");
        foreach (Need need in action.Needs)
            Text(AdviceLines.NeedText(_knowledge, need), LineTone.Plain, "? ");
        Reasons(action.Because, full);
    }

    private void Barred(BarredAction action, bool full)
    {
        Heading($"Why not: {StatusWords.Of(action)}, {StatusWords.Of(action.Severity)} here");
        Reasons(action.Because, full);
        Sources(action.Sources);
    }

    private void NotAdvised(NotAdvisedAction action, bool full)
    {
        Heading("Why not advised");
        Text(action.For.IsEmpty ? "Nothing speaks for it here." : "What speaks against it weighs more.");
        Reasons(action.Against.Concat(action.For), full);
    }

    private void Conflict(Conflict? conflict)
    {
        if (conflict is null)
            return;
        Heading("Rules argue both ways");
        foreach (Reason reason in conflict.For)
            Text("For: " + reason.Text, LineTone.Plain, "  ");
        foreach (Reason reason in conflict.Against)
            Text("Against: " + reason.Text, LineTone.Plain, "  ");
    }

    private void RecordCautions(CatalogueAction? record, AreaAdvice advice, string action)
    {
        ImmutableArray<ActionCaution> cautions =
            advice.Clear.FirstOrDefault(a => a.Action == action)?.Cautions
            ?? [.. (record?.Cautions ?? []).Select(text => new ActionCaution(text, null, true))];
        bool chemical = record is Treatment;
        if (cautions.IsEmpty && !chemical)
            return;
        Heading("Cautions");
        foreach (ActionCaution caution in cautions)
            Text(caution.IsCertain ? caution.Text : "Possibly: " + caution.Text, LineTone.Warning, "! ");
        foreach (string line in chemical ? Safety.StandingLines : [])
            Text(line, LineTone.Warning, "! ");
    }

    private void Reasons(IEnumerable<Reason> reasons, bool full)
    {
        foreach (Reason reason in reasons)
            Tree(reason, full, "");
    }

    private void Tree(Reason reason, bool full, string indent)
    {
        Text(reason.Text, LineTone.Plain, indent + Mark(reason), indent + "  ");
        string strength = reason.Then switch
        {
            Consequence.Argument or Consequence.Finding => $", {AdviceLines.Share(reason.Certainty)}",
            _ => "",
        };
        Text($"rule: {AdviceLines.Sentence(reason.Judgement)}{strength}", LineTone.Quiet, indent + "    ");
        foreach (Need need in reason.Needs)
            Text($"waits for: {AdviceLines.NeedText(_knowledge, need)}", LineTone.Quiet, indent + "    ");
        foreach (MatchedPattern matched in reason.Matched)
        {
            if (full)
                Matched(matched, indent);
            foreach (Reason behind in matched.Behind)
                Tree(behind, full, indent + "    ");
        }
    }

    private void Matched(MatchedPattern matched, string indent)
    {
        Text($"{matched.Pattern}: {matched.Fact}{May(matched.Truth)}", LineTone.Quiet, indent + "    - ", indent + "      ");
        foreach (MatchedTest test in matched.Tests)
        {
            Text(
                $"{test.Attribute} {test.Expected}; read: {test.Read}{May(test.Truth)}",
                LineTone.Quiet, indent + "      . ", indent + "        ");
        }
    }

    private void Sources(ImmutableArray<string> keys)
    {
        if (keys.IsEmpty)
            return;
        Heading("Sources");
        foreach (string key in keys)
        {
            string citation = _knowledge.Sources.TryGetValue(key, out Source? source) ? source.Citation : key;
            Text(citation, LineTone.Quiet, "  ", "    ");
        }
    }

    private static string Mark(Reason reason) => reason.Then switch
    {
        Consequence.Argument when !reason.IsCertain => "? ",
        Consequence.Argument { IsDoubt: true } => "- ",
        Consequence.Argument => "+ ",
        Consequence.Bar => reason.IsCertain ? "x " : "? ",
        _ => "* ",
    };

    private static string May(Truth truth) => truth == Truth.NotKnown ? " (may hold)" : "";

    private void Heading(string text)
    {
        _lines.Add(new AdviceLine(""));
        _lines.Add(new AdviceLine(text, LineTone.Heading));
    }

    private void Text(string text, LineTone tone = LineTone.Plain, string first = "", string? rest = null)
    {
        foreach (string line in Wrapping.Lines(text, _width, first, rest ?? new string(' ', first.Length)))
            _lines.Add(new AdviceLine(line, tone));
    }
}
