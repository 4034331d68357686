using System.Linq.Expressions;
using System.Reflection;
using NRules.RuleModel;
using NRules.RuleModel.Builders;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Inference.Engine;

/// <summary>
/// Builds one engine rule from one judgement. A pattern becomes a typed pattern that lets through what may hold; an
/// absence becomes a negation of what certainly holds, with a collection of what only may hold beside it, so that the
/// rule is looked at again when that changes.
/// </summary>
internal sealed class JudgementRule
{
    private static readonly MethodInfo s_makes =
        typeof(FindingConclusion).GetMethod(nameof(FindingConclusion.Makes), [typeof(string)])!;

    private static readonly PropertyInfo s_isCertain = typeof(Conclusion).GetProperty(nameof(Conclusion.IsCertain))!;
    private static readonly MethodInfo s_isNotEmpty =
        typeof(JudgementRule).GetMethod(nameof(IsNotEmpty), BindingFlags.Static | BindingFlags.NonPublic)!;

    private readonly RuleBuilder _rule = new();
    private readonly ConditionExpressions _conditions = new();
    private readonly List<ParameterExpression> _matched = [];

    private JudgementRule()
    {
    }

    /// <summary>The engine rule of a judgement. Its name is the judgement's id, which the reader keeps unique.</summary>
    public static IRuleDefinition Of(Judgement judgement)
    {
        var building = new JudgementRule();
        building._rule.Name(judgement.Id);
        GroupBuilder all = building._rule.LeftHandSide();
        foreach (Pattern pattern in judgement.When)
            building.Add(all, pattern);
        building._rule.RightHandSide().Action(building.Conclude(judgement));
        return building._rule.Build();
    }

    private void Add(GroupBuilder all, Pattern pattern)
    {
        switch (pattern)
        {
            case Pattern.Fact fact:
                AddConditions(all.Pattern(TypeOf(fact.Kind), Next()), fact, forSure: false);
                break;
            case Pattern.Finding finding:
                AddEvidence(all, finding, atLeastOne: true);
                break;
            case Pattern.Any { Inner: Pattern.Fact inner }:
                AddCollection(all, inner, atLeastOne: true);
                break;
            case Pattern.Any { Inner: Pattern.Finding inner }:
                AddEvidence(all, inner, atLeastOne: true);
                break;
            case Pattern.None { Inner: Pattern.Fact inner }:
                AddConditions(all.Not().Pattern(TypeOf(inner.Kind), $"no{_matched.Count}"), inner, forSure: true);
                AddCollection(all, inner, atLeastOne: false);
                break;
            case Pattern.None { Inner: Pattern.Finding inner }:
                PatternBuilder absent = all.Not().Pattern(typeof(FindingConclusion), $"no{_matched.Count}");
                AddMakes(absent, inner);
                ParameterExpression evidence = ParameterOf(absent);
                absent.Condition(Expression.Lambda(Expression.Property(evidence, s_isCertain), evidence));
                AddEvidence(all, inner, atLeastOne: false);
                break;
            default:
                throw new InvalidOperationException($"no such pattern: {pattern.GetType().Name}");
        }

        // Only a plain pattern is matched as the fact itself; its variables stay usable by later patterns.
        void AddConditions(PatternBuilder builder, Pattern.Fact fact, bool forSure)
        {
            ParameterExpression parameter = ParameterOf(builder);
            foreach (LambdaExpression condition in _conditions.Of(fact, parameter, forSure))
                builder.Condition(condition);
            if (!forSure)
                _matched.Add(parameter);
        }
    }

    private void AddCollection(GroupBuilder all, Pattern.Fact inner, bool atLeastOne)
    {
        PatternBuilder each = EachOfCollection(all, TypeOf(inner.Kind), atLeastOne);
        ParameterExpression parameter = ParameterOf(each);
        foreach (LambdaExpression condition in _conditions.Of(inner, parameter, forSure: false))
            each.Condition(condition);
    }

    private void AddEvidence(GroupBuilder all, Pattern.Finding finding, bool atLeastOne) =>
        AddMakes(EachOfCollection(all, typeof(FindingConclusion), atLeastOne), finding);

    // Matches all facts of a type at once, as a collection; the caller says which belong to it.
    private PatternBuilder EachOfCollection(GroupBuilder all, Type type, bool atLeastOne)
    {
        PatternBuilder collection = all.Pattern(typeof(IEnumerable<>).MakeGenericType(type), Next());
        AggregateBuilder aggregate = collection.Aggregate();
        aggregate.Collect();
        ParameterExpression parameter = ParameterOf(collection);
        if (atLeastOne)
        {
            collection.Condition(Expression.Lambda(
                Expression.Call(s_isNotEmpty.MakeGenericMethod(type), parameter), parameter));
        }

        PatternBuilder each = aggregate.Pattern(type, $"each{_matched.Count}");
        _matched.Add(parameter);
        return each;
    }

    private static void AddMakes(PatternBuilder evidence, Pattern.Finding finding)
    {
        ParameterExpression parameter = ParameterOf(evidence);
        evidence.Condition(Expression.Lambda(
            Expression.Call(parameter, s_makes, Expression.Constant(finding.Id)), parameter));
    }

    private LambdaExpression Conclude(Judgement judgement)
    {
        ParameterExpression context = Expression.Parameter(typeof(IContext), "context");
        NewArrayExpression match = Expression.NewArrayInit(
            typeof(object), _matched.Select(parameter => Expression.Convert(parameter, typeof(object))));
        MethodCallExpression call = Expression.Call(
            Expression.Constant(new Concluding(judgement)), Concluding.Method, context, match);
        return Expression.Lambda(call, [context, .. _matched]);
    }

    private string Next() => $"p{_matched.Count}";

    private static ParameterExpression ParameterOf(PatternBuilder pattern) =>
        Expression.Parameter(pattern.Declaration.Type, pattern.Declaration.Name);

    private static Type TypeOf(FactKind kind) => kind switch
    {
        FactKind.Site => typeof(SiteFact),
        FactKind.Weed => typeof(WeedFact),
        FactKind.Crop => typeof(CropFact),
        FactKind.Practice => typeof(PracticeFact),
        FactKind.Treatment => typeof(TreatmentFact),
        FactKind.Action => typeof(ActionFact),
        FactKind.Past => typeof(PastFact),
        FactKind.Closure => typeof(ClosureFact),
        FactKind.Limit => typeof(LimitFact),
        FactKind.Escape => typeof(EscapeFact),
        _ => throw new InvalidOperationException($"no such kind of fact: {kind}"),
    };

    private static bool IsNotEmpty<T>(IEnumerable<T> facts) => facts.Any();
}
