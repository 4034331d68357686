using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Reports.Text;

/// <summary>Actions that one rule bars, told once.</summary>
/// <param name="Severity">How hard the bar is.</param>
/// <param name="Judgement">The rule.</param>
/// <param name="Text">Its reason, in words that fit every action of the group.</param>
/// <param name="Sources">Keys of its sources.</param>
/// <param name="Actions">The actions, in the order of the advice.</param>
internal sealed record BarGroup(
    Severity Severity,
    string Judgement,
    string Text,
    ImmutableArray<string> Sources,
    ImmutableArray<BarredAction> Actions);

/// <summary>
/// Groups barred actions by reason. An action stands in one group only: under the reason, among its hardest, that
/// it shares with most of the actions still to be placed. So the groups are few and the largest come first.
/// </summary>
internal static class BarGroups
{
    public static ImmutableArray<BarGroup> Of(Names names, ImmutableArray<BarredAction> barred)
    {
        List<BarredAction> left = [.. barred];
        List<BarGroup> groups = [];
        while (left.Count > 0)
        {
            BarGroup largest = Largest(names, left);
            groups.Add(largest);
            left.RemoveAll(action => largest.Actions.Contains(action));
        }

        return [.. groups.OrderByDescending(group => group.Severity)];
    }

    private static BarGroup Largest(Names names, List<BarredAction> actions) =>
        actions
            .SelectMany(action => Hardest(action).Select(reason => (Action: action, Reason: reason)))
            .GroupBy(item => (item.Action.Severity, item.Reason.Judgement, Text: names.WithoutName(item.Reason)))
            .Select(group => new BarGroup(
                group.Key.Severity,
                group.Key.Judgement,
                group.Key.Text,
                group.First().Reason.Sources,
                [.. group.Select(item => item.Action).Distinct()]))
            .OrderByDescending(group => group.Severity)
            .ThenByDescending(group => group.Actions.Length)
            .ThenBy(group => group.Judgement, StringComparer.Ordinal)
            .ThenBy(group => group.Text, StringComparer.Ordinal)
            .First();

    private static ImmutableArray<Reason> Hardest(BarredAction action)
    {
        ImmutableArray<Reason> hardest =
            [.. action.Because.Where(reason => reason.Then is Consequence.Bar bar && bar.Severity == action.Severity)];
        return hardest.IsEmpty ? action.Because : hardest;
    }
}
