using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Plan;

/// <summary>
/// Tries answers to the questions that are open, and prices the plan with each: at the rounds of the plan and of those
/// that came near it, so that many can be tried.
/// </summary>
public sealed class PlanAnswers
{
    private const string Nothing = "nothing was put on";

    private readonly Advisor _advisor;
    private readonly AreaCase _found;
    private readonly AreaPlan _plan;
    private readonly PlannedWay _best;
    private readonly CancellationToken _stop;
    private readonly PlanEffort _effort;

    private PlanAnswers(Advisor advisor, AreaCase found, AreaPlan plan, PlannedWay best, CancellationToken stop)
    {
        (_advisor, _found, _plan, _best, _stop) = (advisor, found, plan, best, stop);
        _effort = new PlanEffort
        {
            Rounds =
            [
                .. new[] { best.Way.Plan.Rounds }.Concat(plan.RunnersUp.Select(one => one.Way.Plan.Rounds)).Distinct(),
            ],
        };
    }

    /// <summary>Tries the answers.</summary>
    /// <param name="advisor">Gives advice.</param>
    /// <param name="found">The area as the visit found it.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="most">How many answers are tried at most; 0 for none.</param>
    /// <param name="stop">Stops early: what was tried by then comes back.</param>
    public static PlanQuestions Of(
        Advisor advisor,
        AreaCase found,
        AreaPlan plan,
        int most,
        CancellationToken stop = default
    ) =>
        plan.Best is not { } best ? PlanQuestions.None
        : most > 0 ? new PlanAnswers(advisor, found, plan, best, stop).Tried(most)
        : PlanQuestions.None with { Source = SourceCleaned.Of(advisor, found, plan, best, plan.Case.Request) };

    private KnowledgeBase Knowledge => _advisor.Knowledge;

    private PlanQuestions Tried(int most)
    {
        WaitingAction[] blocked = [.. Blocked()];
        string[] open = [.. Open(blocked)];
        var tried = ImmutableArray.CreateBuilder<AnswerTried>();
        var notTried = ImmutableArray.CreateBuilder<string>();
        int left = most;
        foreach (string id in open)
        {
            (string Words, AreaCase With)[] answers = [.. Answers(id)];
            if (answers.Length == 0 || answers.Length > left || _stop.IsCancellationRequested)
            {
                notTried.Add(id);
                continue;
            }

            left -= answers.Length;
            tried.AddRange(answers.Select(answer => Try(id, answer.Words, answer.With)).OfType<AnswerTried>());
        }

        return new PlanQuestions
        {
            Tried = [.. tried.OrderByDescending(one => Math.Abs(one.ChangeUsd))],
            NotTried = notTried.ToImmutable(),
            Blocked = [.. blocked.Select(one => one.Action)],
            BlockedBy = [.. QuestionsOf(blocked)],
            BlockedByLabel = blocked.Count(one => one.Needs.Any(need => need.Kind == NeedKind.Record)),
            MostSavedUsd = blocked.Length == 0 ? 0 : MostSaved(),
            Source = SourceCleaned.Of(_advisor, _found, _plan, _best, _plan.Case.Request),
        };
    }

    // Preventives for the pots that no day of the year clears, and that an answer or a label may clear.
    private IEnumerable<WaitingAction> Blocked()
    {
        IEnumerable<AreaAdvice> year = _plan.Case.Season is { } season
            ? season.Weekly.Stretches.Select(stretch => stretch.Advice)
            : [_plan.Case.Money.Advice];
        AreaAdvice[] all = [.. year];
        HashSet<string> clear = [.. all.SelectMany(advice => advice.Clear).Select(one => one.Action)];
        return all.SelectMany(advice => advice.Waiting)
            .Where(one =>
                !clear.Contains(one.Action)
                && !_plan.Case.Request.Without.Contains(one.Action)
                && Knowledge.Treatments.GetValueOrDefault(one.Action)
                    is { Role: "preemergence", ReachesCrop: true, ResidualWeeks: not null }
            )
            .DistinctBy(one => one.Action)
            .OrderBy(one => one.Action, StringComparer.Ordinal);
    }

    private static IEnumerable<string> QuestionsOf(IEnumerable<WaitingAction> waiting) =>
        waiting
            .SelectMany(one => one.Needs.Where(need => need.Kind == NeedKind.Question).Select(need => need.Id))
            .GroupBy(id => id, StringComparer.Ordinal)
            .OrderByDescending(group => group.Count())
            .ThenBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => group.Key);

    // Those that preventives wait for come first, then what the rest of the work waits for.
    private IEnumerable<string> Open(WaitingAction[] blocked)
    {
        AreaAdvice advice = _plan.Case.Money.Advice;
        IEnumerable<string> past = _found.Area.Past is null ? [QuestionIds.Past] : [];
        return past.Concat(QuestionsOf(blocked))
            .Concat(advice.NextQuestion is { } next ? [next.Id] : [])
            .Concat(QuestionsOf(advice.Waiting.Where(one => MayBeInPlan(one.Action))))
            .Distinct();
    }

    private bool MayBeInPlan(string action) =>
        Knowledge.ActionOf(action) is { } record && Money.WayPlans.IsComparable(record);

    private IEnumerable<(string Words, AreaCase With)> Answers(string id)
    {
        if (id == QuestionIds.Past)
            return _found.Area.Past is null ? [(Nothing, With(_found.Area with { Past = [] }))] : [];
        return Knowledge.QuestionOf(id) is { Kind: QuestionKind.OneOf or QuestionKind.AnyOf } question
            ? question.Choices.Select(choice =>
                (choice.Text, With(_found.Area.Taking((id, new Answer.Words(WordSet.Of(choice.Id))))))
            )
            : [];
    }

    private AreaCase With(VisitArea area) => _found with { Area = area };

    private AnswerTried? Try(string question, string answer, AreaCase with)
    {
        if (Planned(with) is not { } way)
            return null;
        return new AnswerTried(question, answer, way.Usd - _best.Way.Usd, way, !IsSame(way, _best.Way));
    }

    private Way? Planned(AreaCase with)
    {
        Outcome<PlanCase, string> plan = PlanCase.Of(_advisor, with, _plan.Case.Request);
        return plan.IsGood ? PlanSearch.Of(plan.Value, _effort, _stop).Best?.Way : null;
    }

    private static bool IsSame(Way one, Way other) =>
        one.Plan.Rounds == other.Plan.Rounds
        && one.Plan.Parts.Length == other.Plan.Parts.Length
        && one.Plan.Parts.Zip(other.Plan.Parts)
            .All(pair =>
                pair.First.Action.Id == pair.Second.Action.Id && pair.First.Weeks.SequenceEqual(pair.Second.Weeks)
            );

    // With everything that waits taken for clear, and the past for told: no answer leaves more to choose from.
    private decimal MostSaved()
    {
        AreaCase with = _found.Area.Past is null ? With(_found.Area with { Past = [] }) : _found;
        Outcome<PlanCase, string> plan = PlanCase.Of(_advisor, with, _plan.Case.Request with { CountsWaiting = true });
        return plan.IsGood ? Math.Max(0, _best.Way.Usd - PlanSearch.FloorOf(plan.Value)) : 0;
    }
}
