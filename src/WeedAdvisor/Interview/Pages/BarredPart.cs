using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;
using static WeedAdvisor.Interview.Pages.PageLines;

namespace WeedAdvisor.Interview.Pages;

/// <summary>
/// What is barred in an area, by rule: what is prohibited by name, what merely does not suit by number.
/// </summary>
internal static class BarredPart
{
    public static IEnumerable<Block> Of(AdviceWords words, AreaAdvice advice, bool full)
    {
        if (advice.Barred.IsEmpty)
            yield break;
        foreach (Block block in Head($"Barred here ({advice.Barred.Length})"))
            yield return block;
        var groups = advice
            .Barred.GroupBy(action =>
                (
                    action.Status,
                    Severity: action.Deciding.IsEmpty ? action.Severity : BarGroups.SeverityOf(action.Deciding[0]),
                    Rule: action.Deciding.IsEmpty ? "" : action.Deciding[0].Judgement,
                    End: StatusWords.EndOf(action)
                )
            )
            .OrderByDescending(group => group.Key.Status)
            .ThenByDescending(group => group.Key.Severity)
            .ThenBy(group => group.Key.Rule, StringComparer.Ordinal);
        bool isCounted = false;
        foreach (var group in groups)
        {
            bool isProhibited = group.Key.Severity == Severity.Prohibited;
            string severity = StatusWords.Of(group.Key.Severity);
            // What is not yet and wanted stands above, with its day.
            bool isNamed = full || (isProhibited && group.Key.Status != ActionStatus.NotYet);
            isCounted |= !isNamed;
            string?[] how =
            [
                ActionStatuses.Text(group.Key.Status),
                group.Key.End.Length > 0 ? group.Key.End : null,
                isNamed ? severity : $"{severity}: {group.Count()}",
            ];
            yield return Marked(
                "x ",
                $"{AdviceWords.Sentence(group.Key.Rule)} ({string.Join(", ", how.OfType<string>())})",
                isProhibited ? Tone.Warning : Tone.Normal
            );
            foreach (BarredAction action in group.Where(_ => isNamed))
                yield return In(4, words.Name(action.Action), action: action.Action);
        }

        if (isCounted)
            yield return In(2, "What does not suit, or not yet, is only counted; Space names it.", Tone.Muted);
    }
}
