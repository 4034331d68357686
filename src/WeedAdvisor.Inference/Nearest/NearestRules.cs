using System.Collections.Immutable;
using WeedAdvisor.Inference.Assembly;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Inference.Engine;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Nearest;

/// <summary>
/// Which rules would speak for an action and come nearest to it: of each the match on which the fewest conditions fail.
/// The engine stops at the first condition that fails; the condition tree does not.
/// </summary>
public sealed class NearestRules
{
    private readonly ImmutableArray<Fact> _facts;
    private readonly ILookup<string, FindingConclusion> _evidence;
    private readonly ILookup<string, Judgement> _makers;
    private readonly KnowledgeBase _knowledge;
    private readonly Reasons _reasons;
    private readonly Lazy<ImmutableArray<ActionFact>> _catalogue;
    private readonly Dictionary<string, Miss> _ofFinding = new(StringComparer.Ordinal);

    private NearestRules(KnowledgeBase knowledge, AreaCase looked)
    {
        _knowledge = knowledge;
        _reasons = new Reasons(knowledge);
        _catalogue = new Lazy<ImmutableArray<ActionFact>>(() => CatalogueFacts.Of(knowledge));
        _facts = AreaFacts.Of(knowledge, looked);
        Judgement[] findings = [.. knowledge.Judgements.Where(one => one.Then is Consequence.MakesFinding)];
        _makers = findings.ToLookup(one => ((Consequence.MakesFinding)one.Then).Id, StringComparer.Ordinal);
        _evidence = TreeInference
            .Conclude(findings, _facts)
            .OfType<FindingConclusion>()
            .ToLookup(one => one.Finding, StringComparer.Ordinal);
    }

    /// <summary>The rules as they stand in an area.</summary>
    public static NearestRules In(KnowledgeBase knowledge, AreaCase looked) => new(knowledge, looked);

    /// <summary>
    /// The rules that support an action but do not hold here, the nearest first: fewest conditions not met, then fewest
    /// not known, then by id. Rules that could never speak of the action are left out.
    /// </summary>
    /// <param name="action">The action's id.</param>
    public ImmutableArray<NearRule> Supporting(string action)
    {
        if (CatalogueFacts.One(_knowledge, action) is not { } fact)
            return [];
        return
        [
            .. _knowledge
                .Judgements.Where(one => one.Then is Consequence.Argument { IsDoubt: false } && SpeaksOf(one, fact))
                .Select(one => NearestOf(one, [fact]))
                .Where(near => near.Miss.Missed > 0)
                .OrderBy(near => near.Miss)
                .ThenBy(near => near.Judgement.Id, StringComparer.Ordinal)
                .Select(near => new NearRule(ReasonOf(near), near.Miss.Missed, near.Miss.Open)),
        ];
    }

    /// <summary>The rule that comes nearest to a finding which is not made; null when no rule makes it.</summary>
    public NearRule? Making(string finding) =>
        _makers[finding]
            .Select(maker => NearestOf(maker, []))
            .OrderBy(near => near.Miss)
            .ThenBy(near => near.Judgement.Id, StringComparer.Ordinal)
            .Select(near => new NearRule(ReasonOf(near), near.Miss.Missed, near.Miss.Open))
            .FirstOrDefault();

    private Advice.Reason ReasonOf(Near near) =>
        _reasons.Of(Conclusion.Of(near.Judgement, near.Match, MatchTruth.Of(near.Judgement, near.Match)));

    // What no answer changes: a test on the record without a variable of the case.
    private static bool SpeaksOf(Judgement judgement, ActionFact action) =>
        judgement.When.Any(pattern => pattern.IsOnAction())
        && judgement
            .When.OfType<Pattern.Fact>()
            .Where(pattern => pattern.IsOnAction())
            .All(pattern =>
                PatternTruth.IsOfKind(action, pattern.Kind)
                && pattern
                    .Tests.Where(one => !Variables.In(one.Test).Any())
                    .All(one => TestTruth.Of(one.Test, action.Read(one.Attribute), Bindings.None) != Truth.No)
            );

    private Near NearestOf(Judgement judgement, ImmutableArray<ActionFact> actions)
    {
        Near? best = null;
        Extend(0, [], Bindings.None, default);
        return best!;

        void Extend(int next, ImmutableArray<Matched> soFar, Bindings bindings, Miss miss)
        {
            if (best is { } found && miss.CompareTo(found.Miss) >= 0)
                return;
            if (next == judgement.When.Length)
            {
                best = new Near(judgement, soFar, miss);
                return;
            }

            Pattern pattern = judgement.When[next];
            foreach (Matched candidate in Candidates(pattern, bindings, actions))
            {
                PatternHolds outcome = PatternHolds.Of(pattern, candidate, bindings);
                Extend(
                    next + 1,
                    soFar.Add(candidate),
                    outcome.Bindings,
                    miss.And(MissOf(pattern, candidate, bindings, outcome))
                );
            }
        }
    }

    private IEnumerable<Matched> Candidates(Pattern pattern, Bindings bindings, ImmutableArray<ActionFact> actions)
    {
        switch (pattern)
        {
            case Pattern.Fact fact:
                Fact[] there = [.. FactsOf(fact.Kind, actions)];
                return (there.Length > 0 ? there : [NoFact.Of(fact.Kind)]).Select(one => new Matched.One(one));
            case Pattern.HasFinding finding:
                return [new Matched.Evidence([.. _evidence[finding.Id].Order()])];
            case Pattern.Any { Inner: var inner }:
                return [Inside(inner)];
            case Pattern.None { Inner: var inner }:
                return [Inside(inner)];
            default:
                throw new InvalidOperationException($"no such pattern: {pattern.GetType().Name}");
        }

        Matched Inside(Pattern inner) =>
            inner is Pattern.Fact fact
                ? new Matched.Several([.. AllOf(fact.Kind).Where(one => PatternTruth.MayPass(fact, one, bindings))])
                : Candidates(inner, bindings, actions).Single();
    }

    // "Any" and "none" look at the whole catalogue, a pattern by itself at the action in question.
    private IEnumerable<Fact> AllOf(FactKind kind) =>
        FactsOf(kind, kind.IsOfCatalogue() ? _catalogue.Value : []).Where(fact => PatternTruth.IsOfKind(fact, kind));

    private IEnumerable<Fact> FactsOf(FactKind kind, ImmutableArray<ActionFact> actions) =>
        kind.IsOfCatalogue() ? actions : _facts.Where(fact => PatternTruth.IsOfKind(fact, kind));

    private Miss MissOf(Pattern pattern, Matched candidate, Bindings bindings, PatternHolds outcome) =>
        (pattern, candidate) switch
        {
            (Pattern.Fact, Matched.One { Fact: var none }) when NoFact.Is(none) => new Miss(1, 0),
            (Pattern.Fact fact, Matched.One one) => MissOf(fact, one.Fact, bindings),
            (Pattern.HasFinding finding, _) when outcome.Truth == Truth.No => MissOf(finding.Id),
            _ => Miss.Of(outcome.Truth),
        };

    private static Miss MissOf(Pattern.Fact pattern, Fact fact, Bindings bindings)
    {
        Bindings bound = bindings.With(pattern, fact);
        return pattern
            .Tests.Select(one => Miss.Of(TestTruth.Of(one.Test, fact.Read(one.Attribute), bound)))
            .Aggregate(default(Miss), (all, one) => all.And(one));
    }

    private Miss MissOf(string finding)
    {
        if (_ofFinding.TryGetValue(finding, out Miss known))
            return known;
        Miss[] ways = [.. _makers[finding].Select(maker => NearestOf(maker, []).Miss).Order()];
        return _ofFinding[finding] = ways is [{ Missed: > 0 } nearest, ..] ? nearest : new Miss(1, 0);
    }

    private sealed record Near(Judgement Judgement, ImmutableArray<Matched> Match, Miss Miss);

    // How far off: conditions not met count before those not known.
    private readonly record struct Miss(int Missed, int Open) : IComparable<Miss>
    {
        public static Miss Of(Truth truth) =>
            truth switch
            {
                Truth.No => new Miss(1, 0),
                Truth.NotKnown => new Miss(0, 1),
                _ => default,
            };

        public Miss And(Miss other) => new(Missed + other.Missed, Open + other.Open);

        public int CompareTo(Miss other) =>
            Missed != other.Missed ? Missed.CompareTo(other.Missed) : Open.CompareTo(other.Open);
    }
}
