using System.Collections.Immutable;
using System.Linq.Expressions;
using NRules.RuleModel;
using NRules.RuleModel.Builders;
using WeedAdvisor.Inference.Catalogue;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Engine;

/// <summary>
/// A judgement split in two: what it asks of the case becomes an engine rule, what it asks of an action becomes sets.
/// The rule's name is the judgement's id, so that the engine's own tracing speaks of judgements.
/// </summary>
internal sealed class CaseRule
{
    private readonly ImmutableArray<Pattern> _case;
    private readonly ActionCondition? _condition;

    private CaseRule(Judgement judgement, ImmutableArray<Pattern> ofCase, ActionCondition? condition)
    {
        Judgement = judgement;
        _case = ofCase;
        _condition = condition;
    }

    /// <summary>The judgement.</summary>
    public Judgement Judgement { get; }

    /// <summary>What a judgement asks of the case; what it asks of an action comes with <see cref="On"/>.</summary>
    /// <exception cref="ArgumentException">It asks something of an action and then of something else; the reader
    /// refuses such rules.</exception>
    public static CaseRule Of(Judgement judgement)
    {
        ImmutableArray<Pattern> ofCase = judgement.When[^1].IsOnAction() ? judgement.When[..^1] : judgement.When;
        if (ofCase.Any(pattern => pattern.IsOnAction()))
            throw new ArgumentException($"'{judgement.Id}' asks something else after the action", nameof(judgement));
        return new CaseRule(judgement, ofCase, condition: null);
    }

    /// <summary>The rule with what it asks of an action, as sets of a catalogue.</summary>
    public CaseRule On(ActionIndex index) =>
        Judgement.When[^1].IsOnAction()
            ? new CaseRule(Judgement, _case, ActionCondition.Of((Pattern.Fact)Judgement.When[^1], index))
            : this;

    /// <summary>The engine rule: the condition of each pattern lets through what may hold.</summary>
    public IRuleDefinition Definition(MatcherShelf shelf)
    {
        var rule = new RuleBuilder();
        rule.Name(Judgement.Id);
        GroupBuilder all = rule.LeftHandSide();
        var patterns = new List<ParameterExpression>();
        var bound = new List<BoundVariable>();
        foreach (Pattern pattern in _case)
        {
            PatternBuilder builder = all.Pattern(TypeOf(pattern), $"p{patterns.Count}");
            patterns.Add(Expression.Parameter(builder.Declaration.Type, builder.Declaration.Name));
            HashSet<string> used = [.. Variables.In(pattern)];
            CaseMatcher matcher = shelf.Of(pattern, [.. bound.Where(variable => used.Contains(variable.Name))]);
            if (matcher.Bound.IsEmpty)
                builder.Condition(ConditionOf(shelf.GroupOf(pattern), patterns));
            builder.Condition(ConditionOf(matcher, patterns));
            if (pattern is Pattern.Fact fact)
                bound.AddRange(BoundBy(fact, patterns.Count - 1));
        }

        // A rule without a case speaks always: it hangs on the site, which is always there.
        if (_case.IsEmpty)
            all.Pattern(typeof(SiteFact), "site");
        // What is done with a match stands in MatchKeeper; the engine calls it instead of this.
        rule.RightHandSide()
            .Action(
                Expression.Lambda(Expression.Empty(), Expression.Parameter(typeof(IContext), "context")),
                ActionTrigger.Activated | ActionTrigger.Reactivated | ActionTrigger.Deactivated
            );
        return rule.Build();
    }

    /// <summary>What a match says.</summary>
    /// <param name="matched">What each pattern matched in the engine, in order.</param>
    /// <exception cref="InvalidOperationException">The engine matched what the condition tree says cannot hold: a
    /// defect.</exception>
    public CaseMatch MatchOf(IReadOnlyList<object> matched)
    {
        var match = ImmutableArray.CreateBuilder<Matched>(_case.Length);
        Bindings bindings = Bindings.None;
        for (int i = 0; i < _case.Length; i++)
        {
            match.Add(MatchedBy(_case[i], matched[i], bindings));
            if (_case[i] is Pattern.Fact fact)
                bindings = bindings.With(fact, (Fact)matched[i]);
        }

        MatchTruth truth = MatchTruth.Of(Judgement, match);
        if (truth.Truth == Truth.No)
            throw new InvalidOperationException(
                $"the engine matched '{Judgement.Id}' where its conditions cannot hold"
            );
        return new CaseMatch(
            Judgement,
            match.MoveToImmutable(),
            truth,
            _condition,
            _condition?.Of(truth.Bindings) ?? default
        );
    }

    private static Matched MatchedBy(Pattern pattern, object matched, Bindings bindings) =>
        (pattern, matched) switch
        {
            (Pattern.Fact, Fact fact) => new Matched.One(fact),
            (_, FindingFact finding) => new Matched.Evidence(finding.Evidence),
            (Pattern.Any { Inner: Pattern.Fact inner }, FactList list) => ThatMayPass(inner, list, bindings),
            (Pattern.None { Inner: Pattern.Fact inner }, FactList list) => ThatMayPass(inner, list, bindings),
            _ => throw new InvalidOperationException($"{pattern.GetType().Name} cannot match {matched.GetType().Name}"),
        };

    private static Matched.Several ThatMayPass(Pattern.Fact inner, FactList list, Bindings bindings) =>
        new([.. list.Facts.Where(fact => PatternTruth.MayPass(inner, fact, bindings))]);

    private static LambdaExpression ConditionOf(CaseMatcher matcher, List<ParameterExpression> patterns)
    {
        ParameterExpression fact = patterns[^1];
        ConstantExpression on = Expression.Constant(matcher, typeof(CaseMatcher));
        if (matcher.Bound.IsEmpty)
            return Expression.Lambda(Expression.Call(on, CaseMatcher.OnFact, fact), fact);
        NewArrayExpression before = Expression.NewArrayInit(
            typeof(object),
            matcher.Bound.Select(variable => patterns[variable.Pattern])
        );
        return Expression.Lambda(
            Expression.Call(on, CaseMatcher.OnJoin, before, fact),
            [.. matcher.Bound.Select(variable => patterns[variable.Pattern]).Distinct(), fact]
        );
    }

    private static IEnumerable<BoundVariable> BoundBy(Pattern.Fact fact, int pattern) =>
        fact
            .Tests.Where(one => one.Test is AttributeTest.Variable { Binds: true })
            .Select(one => new BoundVariable(((AttributeTest.Variable)one.Test).Name, pattern, one.Attribute));

    private static Type TypeOf(Pattern pattern) =>
        pattern switch
        {
            Pattern.Fact fact => FactTypes.OfOne(fact.Kind),
            Pattern.Any { Inner: Pattern.Fact inner } => FactTypes.OfList(inner.Kind),
            Pattern.None { Inner: Pattern.Fact inner } => FactTypes.OfList(inner.Kind),
            _ => typeof(FindingFact),
        };
}
