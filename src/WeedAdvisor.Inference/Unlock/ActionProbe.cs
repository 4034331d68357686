using System.Collections.Immutable;
using WeedAdvisor.Inference.Assembly;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Inference.Engine;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Unlock;

/// <summary>How one action stands under other answers: only the rules that can speak of it are asked.</summary>
internal sealed class ActionProbe
{
    private readonly KnowledgeBase _knowledge;
    private readonly AreaCase _looked;
    private readonly ActionFact _action;
    private readonly ImmutableArray<Judgement> _ordered;
    private readonly ImmutableArray<Fact> _others;
    private readonly QuestionsBehind _behind;
    private readonly ImmutableArray<ActionFact> _catalogue;

    /// <summary>A probe of an action in an area.</summary>
    public ActionProbe(KnowledgeBase knowledge, AreaCase looked, ActionFact action, QuestionsBehind behind)
    {
        _knowledge = knowledge;
        _looked = looked;
        _action = action;
        _behind = behind;
        Rules =
        [
            .. knowledge.Judgements.Where(one =>
                one.Then is Consequence.Argument or Consequence.Bar && SpeaksOf(one, action)
            ),
        ];
        _ordered = FindingOrder.Of(Rules.Concat(Below(Rules)));
        // "Any" and "none" look at the whole catalogue.
        _catalogue = _ordered.Any(rule => rule.When.Any(IsOnWholeCatalogue)) ? CatalogueFacts.Of(knowledge) : [action];
        _others = [.. AreaFacts.Of(knowledge, looked).Where(fact => fact is not SiteFact)];
    }

    /// <summary>The rules that bar the action, or speak for it or against it.</summary>
    public ImmutableArray<Judgement> Rules { get; }

    /// <summary>The action as it stands with an answer set; the empty one is how it stands now.</summary>
    public Stand Of(AnswerSet set)
    {
        AreaCase then = set.On(_looked);
        var site = new SiteFact(SiteReadings.Of(_knowledge, then));
        bool isSiteAlone = set.Changes.All(change => !_behind.OfOtherFacts.Contains(change.Question.Id));
        ImmutableArray<Fact> facts = isSiteAlone ? [site, .. _others] : AreaFacts.Of(_knowledge, then);
        ImmutableArray<Conclusion> all = TreeInference.ConcludeInOrder(_ordered, [.. facts, .. _catalogue]);
        return new Stand(new ActionCase(_action.Id, all.Where(one => one.Action?.Id == _action.Id)), site, all);
    }

    // A test on the record without a variable of the case holds or fails whatever is answered.
    private static bool SpeaksOf(Judgement judgement, ActionFact action) =>
        judgement
            .When.OfType<Pattern.Fact>()
            .Where(pattern => pattern.IsOnAction())
            .Select(pattern =>
                PatternTruth.IsOfKind(action, pattern.Kind)
                && pattern
                    .Tests.Where(one => !Variables.In(one.Test).Any())
                    .All(one => TestTruth.Of(one.Test, action.Read(one.Attribute), Bindings.None) != Truth.No)
            )
            .DefaultIfEmpty(false)
            .All(passes => passes);

    private static bool IsOnWholeCatalogue(Pattern pattern) =>
        pattern is Pattern.Any or Pattern.None
        && QuestionsBehind.FactIn(pattern) is { } fact
        && fact.Kind.IsOfCatalogue();

    private HashSet<Judgement> Below(IEnumerable<Judgement> rules)
    {
        var below = new HashSet<Judgement>();
        var left = new Stack<Judgement>(rules);
        while (left.TryPop(out Judgement? rule))
        {
            foreach (
                Judgement maker in rule
                    .When.Select(QuestionsBehind.FindingIn)
                    .OfType<string>()
                    .SelectMany(_behind.Makers)
            )
            {
                if (below.Add(maker))
                    left.Push(maker);
            }
        }

        return below;
    }
}

/// <summary>How an action stands under some answers.</summary>
/// <param name="Case">What was concluded about it.</param>
/// <param name="Site">The site as read.</param>
/// <param name="All">That and the findings.</param>
internal sealed record Stand(ActionCase Case, SiteFact Site, ImmutableArray<Conclusion> All)
{
    /// <summary>Whether a rule certainly holds, for the action or as a finding.</summary>
    public bool Holds(Judgement judgement) => All.Any(one => one.IsCertain && one.Judgement.Id == judgement.Id);
}
