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
    ImmutableArray<BarredAction> Actions
);

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
        List<Candidate> left = CandidatesIn(names, barred, day);
        HashSet<BarredAction> placed = new(ReferenceEqualityComparer.Instance);
        List<BarGroup> groups = [];
        while (placed.Count < barred.Length)
        {
            Candidate largest = left[0];
            foreach (Candidate other in left)
            {
                if (InOrder(other, largest) < 0)
                    largest = other;
            }

            groups.Add(largest.Group());
            placed.UnionWith(largest.Actions);
            foreach (Candidate candidate in left)
                candidate.Actions.RemoveAll(placed.Contains);
            left.RemoveAll(candidate => candidate.Actions.Count == 0);
        }

        return [.. groups.OrderByDescending(group => group.Status).ThenByDescending(group => group.Severity)];
    }

    // What each action is told by is put into words once, whatever group it comes to stand in.
    private static List<Candidate> CandidatesIn(Names names, ImmutableArray<BarredAction> barred, DateOnly day)
    {
        var candidates = new Dictionary<Key, Candidate>();
        foreach (BarredAction action in barred)
        {
            string end = StatusWords.EndOf(action, day);
            foreach (Reason reason in Told(action))
            {
                string text = names.OfAny(action.Action, reason.Said);
                var key = new Key(action.Status, end, SeverityOf(reason), reason.Judgement, text);
                if (!candidates.TryGetValue(key, out Candidate? candidate))
                    candidates[key] = candidate = new Candidate(action.Status, end, reason, text);
                if (candidate.Actions is not [.., var last] || !ReferenceEquals(last, action))
                    candidate.Actions.Add(action);
            }
        }

        return [.. candidates.Values];
    }

    private static int InOrder(Candidate one, Candidate other)
    {
        int order = other.Status.CompareTo(one.Status);
        if (order == 0)
            order = SeverityOf(other.Reason).CompareTo(SeverityOf(one.Reason));
        if (order == 0)
            order = other.Actions.Count.CompareTo(one.Actions.Count);
        if (order == 0)
            order = string.CompareOrdinal(one.Reason.Judgement, other.Reason.Judgement);
        if (order == 0)
            order = string.CompareOrdinal(one.Text, other.Text);
        return order == 0 ? string.CompareOrdinal(one.End, other.End) : order;
    }

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

    private sealed record Key(ActionStatus Status, string End, Severity Severity, string Rule, string Text);

    // A reason with the actions it could be told of that stand in no group yet.
    private sealed record Candidate(ActionStatus Status, string End, Reason Reason, string Text)
    {
        public List<BarredAction> Actions { get; } = [];

        public BarGroup Group() =>
            new(Status, End, SeverityOf(Reason), Reason.Judgement, Text, Reason.Sources, [.. Actions]);
    }
}
