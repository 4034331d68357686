using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Reports.Text;

/// <summary>Actions that one rule bars in the same way, told once.</summary>
/// <param name="Status">Never, not this way or not yet.</param>
/// <param name="End">What ends the bars of all of them, or the other way; empty for never.</param>
/// <param name="Severity">How hard the bar is.</param>
/// <param name="Judgement">The rule.</param>
/// <param name="Text">Its reason, in words that fit every action of the group.</param>
/// <param name="Sources">Keys of its sources.</param>
/// <param name="Actions">The actions, in the order of the advice.</param>
internal sealed record BarGroup(
    ActionStatus Status,
    string End,
    Severity Severity,
    string Judgement,
    string Text,
    ImmutableArray<string> Sources,
    ImmutableArray<BarredAction> Actions);

/// <summary>
/// Groups barred actions by reason. An action stands in one group only: under the reason, among those that make its
/// status, that it shares with most of the actions still to be placed. So the groups are few and the largest come
/// first.
/// </summary>
public static class BarGroups
{
    /// <summary>The groups: never before not this way before not yet, in each the hardest first.</summary>
    internal static ImmutableArray<BarGroup> Of(Names names, ImmutableArray<BarredAction> barred, DateOnly day)
    {
        List<BarredAction> left = [.. barred];
        List<BarGroup> groups = [];
        while (left.Count > 0)
        {
            BarGroup largest = Largest(names, left, day);
            groups.Add(largest);
            left.RemoveAll(action => largest.Actions.Contains(action));
        }

        return [.. groups.OrderByDescending(group => group.Status).ThenByDescending(group => group.Severity)];
    }

    private static BarGroup Largest(Names names, List<BarredAction> actions, DateOnly day) =>
        actions
            .SelectMany(action => Told(action).Select(reason => (Action: action, Reason: reason)))
            .GroupBy(item => (
                item.Action.Status,
                End: StatusWords.EndOf(item.Action, day),
                Severity: SeverityOf(item.Reason),
                item.Reason.Judgement,
                Text: names.OfAny(item.Action.Action, item.Reason.Said)))
            .Select(group => new BarGroup(
                group.Key.Status,
                group.Key.End,
                group.Key.Severity,
                group.Key.Judgement,
                group.Key.Text,
                group.First().Reason.Sources,
                [.. group.Select(item => item.Action).Distinct()]))
            .OrderByDescending(group => group.Status)
            .ThenByDescending(group => group.Severity)
            .ThenByDescending(group => group.Actions.Length)
            .ThenBy(group => group.Judgement, StringComparer.Ordinal)
            .ThenBy(group => group.Text, StringComparer.Ordinal)
            .ThenBy(group => group.End, StringComparer.Ordinal)
            .First();

    // The reason told is one that makes the status, and of the last to end the first.
    private static IEnumerable<Reason> Told(BarredAction action)
    {
        if (action.Status == ActionStatus.NotYet)
            return action.Deciding.Take(1);
        Severity hardest = action.Deciding.Select(SeverityOf).Max();
        return action.Deciding.Where(reason => SeverityOf(reason) == hardest);
    }

    /// <summary>How hard the bar of a reason is.</summary>
    public static Severity SeverityOf(Reason reason) => ((Consequence.Bar)reason.Then).Severity;
}
