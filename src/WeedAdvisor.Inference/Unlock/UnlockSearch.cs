using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Unlock;

/// <summary>
/// The smallest sets of answers, up to three changed, under which an action stands as wanted. Weeds and earlier uses
/// stay as they are. Sets are tried by size, and of each size only those that can bring it about (<see cref="Blame"/>).
/// </summary>
public sealed class UnlockSearch
{
    /// <summary>The most answers that are changed together.</summary>
    public const int MostChanges = 3;

    // So that an answer comes within a second: an action by itself is asked so often, the order of all so often.
    private const int ProbesAsked = 1500,
        OrdersAsked = 240;

    private readonly AreaCase _looked;
    private readonly string _action;
    private readonly ActionProbe _probe;
    private readonly Blame _blame;
    private readonly OtherAnswers _others;
    private readonly ImmutableArray<string> _all;
    private readonly Func<AreaCase, ImmutableArray<ClearAction>> _order;
    private readonly Dictionary<string, Stand> _stands = new(StringComparer.Ordinal);

    private UnlockSearch(Advisor advisor, AreaCase looked, ActionFact action)
    {
        _looked = looked;
        _action = action.Id;
        var behind = new QuestionsBehind(advisor.Knowledge);
        _probe = new ActionProbe(advisor.Knowledge, looked, action, behind);
        _blame = new Blame(_probe, behind);
        _others = new OtherAnswers(advisor.Knowledge, looked.Area);
        _all = [.. advisor.Knowledge.Questions.Select(question => question.Id)];
        var live = new Lazy<LiveAdvice>(() => advisor.Open(looked));
        _order = area => live.Value.OrderOf(area);
    }

    /// <summary>A search on an action in an area; null when there is no such action.</summary>
    public static UnlockSearch? For(Advisor advisor, AreaCase looked, string action) =>
        CatalogueFacts.One(advisor.Knowledge, action) is { } fact ? new UnlockSearch(advisor, looked, fact) : null;

    /// <summary>The smallest sets.</summary>
    /// <param name="goal">What is wanted.</param>
    /// <param name="reach">Which answers may be other ones.</param>
    /// <param name="only">Questions that alone may change; null for all.</param>
    public Unlocked Of(UnlockGoal goal, UnlockReach reach, IReadOnlySet<string>? only = null)
    {
        var tally = new Tally();
        for (int size = 0; size <= MostChanges; size++)
        {
            var found = new List<AnswerSet>();
            var seen = new HashSet<string>(StringComparer.Ordinal);
            Extend([], size);
            if (found.Count > 0)
                return new Unlocked(goal, [.. found.OrderBy(KeyOf, StringComparer.Ordinal)], tally.IsSpent);
            if (tally.IsSpent)
                break;

            void Extend(ImmutableArray<AnswerChange> changes, int left)
            {
                if (!seen.Add(KeyOf(changes)) || tally.IsSpent)
                    return;
                Stand stand = StandOf(changes, tally);
                IEnumerable<string>? blamed = BlamedFor(goal, stand, changes, left, tally);
                if (blamed is null)
                {
                    // A smaller set would have been found before.
                    if (left == 0)
                        found.Add(new AnswerSet(changes, stand.Case.Status));
                    return;
                }

                if (left == 0)
                    return;
                foreach (string question in blamed)
                {
                    if (only?.Contains(question) == false || changes.Any(change => change.Question.Id == question))
                        continue;
                    foreach (AnswerChange other in _others.To(question).Where(other => IsWithin(other, reach)))
                        Extend([.. changes.Append(other).OrderBy(change => change.Question.Order)], left - 1);
                }
            }
        }

        return new Unlocked(goal, [], tally.IsSpent);
    }

    private static bool IsWithin(AnswerChange change, UnlockReach reach) =>
        reach switch
        {
            UnlockReach.All => true,
            UnlockReach.Time => change.By is null or ChangedBy.Hand or ChangedBy.Time,
            _ => change.By is null or ChangedBy.Hand,
        };

    // In a fixed order, what has most to do with it first.
    private IEnumerable<string>? BlamedFor(
        UnlockGoal goal,
        Stand stand,
        ImmutableArray<AnswerChange> changes,
        int left,
        Tally tally
    )
    {
        if (goal == UnlockGoal.Bar)
            return _blame.ForBar(stand)?.Order(StringComparer.Ordinal);
        if (_blame.ForClear(stand) is { } notClear)
            return notClear.Order(StringComparer.Ordinal);
        if (goal == UnlockGoal.Clear)
            return null;
        // Whether it comes first is asked only of whole sets: the order of all takes longer.
        if (left == 0 && IsFirst(changes, tally))
            return null;
        // What moves others may bring it first too.
        IReadOnlySet<string> own = _blame.ForOrder(stand);
        return own.Order(StringComparer.Ordinal).Concat(_all.Where(question => !own.Contains(question)));
    }

    private Stand StandOf(ImmutableArray<AnswerChange> changes, Tally tally)
    {
        string key = KeyOf(changes);
        if (_stands.TryGetValue(key, out Stand? known))
            return known;
        tally.Probes++;
        return _stands[key] = _probe.Of(new AnswerSet(changes, default));
    }

    private bool IsFirst(ImmutableArray<AnswerChange> changes, Tally tally)
    {
        tally.Orders++;
        return IsFirst(_action, _order(new AnswerSet(changes, default).On(_looked)));
    }

    /// <summary>Whether an action stands before all else that is for the same time; with others of its job it may
    /// share the place.</summary>
    internal static bool IsFirst(string action, ImmutableArray<ClearAction> order) =>
        order.FirstOrDefault(one => one.Action == action) is { } it
        && order.First(one => one.Horizon == it.Horizon).Rank == it.Rank;

    private static string KeyOf(AnswerSet set) => KeyOf(set.Changes);

    private static string KeyOf(ImmutableArray<AnswerChange> changes) =>
        string.Join(';', changes.Select(change => $"{change.Question.Id}={TextOf(change.Then)}"));

    private static string TextOf(Knowledge.Visits.Answer answer) =>
        answer is Knowledge.Visits.Answer.Words words ? words.Value.ToString() : answer.ToString();

    private sealed class Tally
    {
        public int Probes { get; set; }

        public int Orders { get; set; }

        public bool IsSpent => Probes > ProbesAsked || Orders > OrdersAsked;
    }
}

/// <summary>The smallest sets of answers that were found.</summary>
/// <param name="Goal">What was wanted.</param>
/// <param name="Sets">The sets, all of one size; one empty set where it stands so already; none where there is
/// none.</param>
/// <param name="IsCutShort">Whether the search ended before every set was tried.</param>
public sealed record Unlocked(UnlockGoal Goal, ImmutableArray<AnswerSet> Sets, bool IsCutShort)
{
    /// <summary>Whether it stands so already.</summary>
    public bool IsSo => Sets is [{ Changes.IsEmpty: true }];
}
