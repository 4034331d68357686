using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Interview;

/// <summary>The advice for an area as short lines of a given width, for a pane or a list.</summary>
public sealed class AdviceLines
{
    private readonly KnowledgeBase _knowledge;
    private readonly int _width;
    private readonly bool _full;
    private readonly List<AdviceLine> _lines = [];

    private AdviceLines(KnowledgeBase knowledge, int width, bool full)
    {
        _knowledge = knowledge;
        _width = width;
        _full = full;
    }

    /// <summary>The advice in lines.</summary>
    /// <param name="knowledge">The knowledge, for the names of things.</param>
    /// <param name="advice">The advice.</param>
    /// <param name="next">The question that is put next, or null.</param>
    /// <param name="width">Columns.</param>
    /// <param name="full">Whether to name every action that merely does not suit the place, and every caution that only may apply.</param>
    /// <param name="current">The question on screen, which need not be told again; null when there is none.</param>
    public static ImmutableArray<AdviceLine> Of(
        KnowledgeBase knowledge, AreaAdvice advice, Question? next, int width, bool full, Question? current = null)
    {
        var lines = new AdviceLines(knowledge, width, full);
        lines.KeepOut(advice);
        lines.Next(advice, next, current);
        lines.Clear(advice, "now", "Do now");
        lines.Clear(advice, "season", "This season");
        lines.Clear(advice, "standing", "Standing habits");
        lines.Findings(advice);
        lines.Cautions(advice);
        lines.Waiting(advice);
        lines.Possible(advice);
        lines.Barred(advice);
        lines.NotAdvised(advice);
        lines.Gaps(advice);
        lines.Chemicals(advice);
        return [.. lines._lines];
    }

    // Whoever reads only the first lines must read this.
    private void KeepOut(AreaAdvice advice)
    {
        if (advice.KeepOut is not { } keepOut)
            return;
        Heading($"Keep out {UntilWords.KeepOut(keepOut)}");
        foreach (string reason in keepOut.Because)
            Wrapped(reason, "! ", LineTone.Warning);
        foreach (Need need in keepOut.Needs)
            Wrapped(NeedText(_knowledge, need), "? ");
        if (!keepOut.Then.IsEmpty)
            Wrapped("From then, best first:", "  ");
        foreach (string action in keepOut.Then)
            Action(action, "  - ", "    ");
    }

    private void Next(AreaAdvice advice, Question? next, Question? current)
    {
        Heading("Next question");
        if (next is null)
        {
            Wrapped(
                advice.NextQuestion is null
                    ? "None: no open answer would change the advice."
                    : "None new: what is left was passed over or is not known.",
                "  ");
            return;
        }

        Wrapped(next.Id == current?.Id ? "The one on this page." : next.Ask, "  ");
        if (advice.NextQuestion is { } best && best.Id == next.Id && best.Settles > 0)
            Wrapped($"{best.Settles} conclusions wait for it.", "  ", LineTone.Quiet);
    }

    private void Clear(AreaAdvice advice, string when, string heading)
    {
        ClearAction[] actions = [.. advice.Clear.Where(action => action.When == when)];
        if (actions.Length == 0)
            return;
        Heading(heading);
        foreach (ClearAction action in actions)
        {
            string rank = action.Rank.ToString(CultureInfo.InvariantCulture).PadLeft(2) + " ";
            Action(action.Action, rank, "   ");
            Wrapped(Figures(action), "   ", LineTone.Quiet, action.Action);
            if (StatusWords.Unless(action, need => NeedText(_knowledge, need)) is { } unless)
                Wrapped($"clear unless: {unless}", "   ", LineTone.Warning, action.Action);
            if (_knowledge.Treatments.ContainsKey(action.Action))
                Wrapped("chemical: the label comes first", "   ", LineTone.Warning, action.Action);
        }
    }

    /// <summary>The numbers behind a rank, in one line.</summary>
    public static string Figures(ClearAction action)
    {
        string effect = action.Effect.Reduction is { } reduction
            ? $"{Share(reduction)} effect"
            : $"{Share(Effect.WhenMissing)} effect (none published)";
        string cost = action.CostUsd is { } usd ? $"; ${usd.ToString("0", CultureInfo.InvariantCulture)}" : "";
        string hours = action.Hours is { } h ? $", {h.ToString("0.#", CultureInfo.InvariantCulture)} h" : "";
        return $"merit {Share(action.Merit)} = {Share(action.Certainty)} certain x {effect}{cost}{hours}";
    }

    /// <summary>A share with two decimals.</summary>
    public static string Share(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>A rule's id as the sentence it is.</summary>
    public static string Sentence(string judgement)
    {
        string words = judgement.Replace('-', ' ');
        return words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
    }

    /// <summary>What has to be found out, in words.</summary>
    public static string NeedText(KnowledgeBase knowledge, Need need)
    {
        if (need.Kind == NeedKind.Question)
            return knowledge.QuestionOf(need.Id)?.Ask ?? need.Id;
        int dot = need.Id.IndexOf('.', StringComparison.Ordinal);
        string field = (dot < 0 ? need.Id : need.Id[(dot + 1)..]).Replace('-', ' ');
        return $"the label's \"{field}\" (the record leaves it open)";
    }

    private void Findings(AreaAdvice advice)
    {
        Finding[] certain = [.. advice.Findings.Where(finding => finding.IsCertain)];
        int possible = advice.Findings.Length - certain.Length;
        if (certain.Length == 0)
            return;
        Heading("What was found");
        foreach (Finding finding in certain)
            Wrapped($"{finding.Text} ({Share(finding.Certainty)})", "  ");
        if (possible > 0)
            Wrapped($"{possible} more may hold; they wait for answers.", "  ", LineTone.Quiet);
    }

    private void Cautions(AreaAdvice advice)
    {
        AreaCaution[] told = [.. advice.Cautions.Where(caution => caution.IsCertain || _full)];
        int untold = advice.Cautions.Length - told.Length;
        if (advice.Cautions.IsEmpty)
            return;
        Heading("Cautions");
        foreach (AreaCaution caution in told)
            Wrapped(caution.IsCertain ? caution.Text : "Possibly: " + caution.Text, "! ", LineTone.Warning);
        if (untold > 0)
            Wrapped($"{untold} more may apply; Space names them.", "  ", LineTone.Quiet);
    }

    private void Chemicals(AreaAdvice advice)
    {
        if (!Safety.NamesTreatment(advice, _knowledge))
            return;
        Heading("Before any chemical");
        foreach (string line in Safety.StandingLines)
            Wrapped(line, "! ", LineTone.Warning);
    }

    private void Waiting(AreaAdvice advice)
    {
        if (advice.Waiting.IsEmpty)
            return;
        Heading($"Waiting for an answer ({advice.Waiting.Length})");
        // What waits for least stands first: it is nearest to being settled.
        foreach (WaitingAction action in advice.Waiting.OrderBy(waiting => waiting.Needs.Length))
        {
            Action(action.Action, "? ", "  ");
            string[] needs = [.. action.Needs.Select(need => NeedText(_knowledge, need))];
            if (needs.Length > 0)
            {
                string more = needs.Length > 1 ? $" and {needs.Length - 1} more" : "";
                Wrapped(needs[0] + more, "    ", LineTone.Quiet, action.Action);
            }
        }
    }

    private void Possible(AreaAdvice advice)
    {
        BarredAction[] actions =
            [.. BecomingPossible.Of(advice).Where(action => advice.KeepOut?.Then.Contains(action.Action) != true)];
        if (actions.Length == 0)
            return;
        Heading($"What becomes possible, and when ({actions.Length})");
        foreach (BarredAction action in actions)
        {
            Action(action.Action, "  ", "  ");
            Wrapped(UntilWords.From(action.Until!), "    ", LineTone.Quiet, action.Action);
        }
    }

    private void NotAdvised(AreaAdvice advice)
    {
        NotAdvisedAction[] outweighed = [.. advice.NotAdvised.Where(action => !action.For.IsEmpty)];
        if (outweighed.Length == 0)
            return;
        Heading($"Not advised: more speaks against ({outweighed.Length})");
        foreach (NotAdvisedAction action in outweighed)
            Action(action.Action, "- ", "  ");
    }

    private void Barred(AreaAdvice advice)
    {
        if (advice.Barred.IsEmpty)
            return;
        Heading($"Barred here ({advice.Barred.Length})");
        var groups = advice.Barred
            .GroupBy(action => (
                action.Status,
                Severity: action.Deciding.IsEmpty ? action.Severity : BarGroups.SeverityOf(action.Deciding[0]),
                Rule: action.Deciding.IsEmpty ? "" : action.Deciding[0].Judgement,
                End: StatusWords.EndOf(action)))
            .OrderByDescending(group => group.Key.Status)
            .ThenByDescending(group => group.Key.Severity)
            .ThenBy(group => group.Key.Rule, StringComparer.Ordinal);
        bool isCounted = false;
        foreach (var group in groups)
        {
            bool prohibited = group.Key.Severity == Severity.Prohibited;
            string severity = StatusWords.Of(group.Key.Severity);
            // What is not yet and wanted stands above, with its day.
            bool named = _full || (prohibited && group.Key.Status != ActionStatus.NotYet);
            isCounted |= !named;
            string?[] how =
            [
                ActionStatuses.Text(group.Key.Status),
                group.Key.End.Length > 0 ? group.Key.End : null,
                named ? severity : $"{severity}: {group.Count()}",
            ];
            Wrapped($"{Sentence(group.Key.Rule)} ({string.Join(", ", how.OfType<string>())})", "x ", prohibited ? LineTone.Warning : LineTone.Plain);
            foreach (BarredAction action in group.Where(_ => named))
                Action(action.Action, "    ", "    ");
        }

        if (isCounted)
            Wrapped("What does not suit, or not yet, is only counted; Space names it.", "  ", LineTone.Quiet);
    }

    private void Gaps(AreaAdvice advice)
    {
        if (advice.Gaps.IsEmpty)
            return;
        Heading("What no rule could judge");
        foreach (Gap gap in advice.Gaps)
            Wrapped(gap.Text, "  ");
    }

    private void Heading(string text)
    {
        if (_lines.Count > 0)
            _lines.Add(new AdviceLine(""));
        _lines.Add(new AdviceLine(text, LineTone.Heading));
    }

    private void Action(string id, string first, string rest)
    {
        string name = _knowledge.ActionOf(id)?.Name ?? id;
        foreach (string line in Wrapping.Lines(name, _width, first, rest))
            _lines.Add(new AdviceLine(line, LineTone.Plain, id));
    }

    private void Wrapped(string text, string indent, LineTone tone = LineTone.Plain, string? action = null)
    {
        foreach (string line in Wrapping.Lines(text, _width, indent, new string(' ', indent.Length)))
            _lines.Add(new AdviceLine(line, tone, action));
    }
}
