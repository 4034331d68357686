using System.Linq.Expressions;
using System.Reflection;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Engine;

/// <summary>
/// Turns tests into the conditions of an engine rule. Only calls with constants and comparisons are used: the engine
/// shares such nodes between rules, and refuses others.
/// </summary>
internal sealed class ConditionExpressions
{
    private static readonly MethodInfo s_read = MethodOf<Fact>(nameof(Fact.Read), typeof(string));
    private static readonly MethodInfo s_isAnyOf = MethodOf<Reading>(nameof(Reading.IsAnyOf), typeof(WordSet));
    private static readonly MethodInfo s_shares = MethodOf<Reading>(nameof(Reading.Shares), typeof(Reading));
    private static readonly MethodInfo s_comparesLimit =
        MethodOf<Reading>(nameof(Reading.Compares), typeof(Comparison), typeof(decimal));

    private static readonly MethodInfo s_comparesReading =
        MethodOf<Reading>(nameof(Reading.Compares), typeof(Comparison), typeof(Reading));

    private static readonly PropertyInfo s_hasValue = typeof(Reading).GetProperty(nameof(Reading.HasValue))!;

    private readonly Dictionary<string, (ParameterExpression Fact, string Attribute)> _variables =
        new(StringComparer.Ordinal);

    /// <summary>
    /// The conditions of one pattern on the fact that the parameter stands for: those it passes unless it certainly
    /// fails, or (for sure) only those that it certainly passes. Variables met for the first time are remembered.
    /// </summary>
    public IEnumerable<LambdaExpression> Of(Pattern.Fact pattern, ParameterExpression fact, bool forSure)
    {
        foreach ((string attribute, AttributeTest test) in pattern.Tests)
        {
            foreach (LambdaExpression condition in Of(test, fact, attribute, forSure))
                yield return condition;
            if (test is AttributeTest.Variable { Binds: true } variable)
                _variables[variable.Name] = (fact, attribute);
        }
    }

    private IEnumerable<LambdaExpression> Of(
        AttributeTest test, ParameterExpression fact, string attribute, bool forSure)
    {
        Expression reading = Read(fact, attribute);
        return test switch
        {
            AttributeTest.Word word => [Holds(
                Expression.Call(reading, s_isAnyOf, Expression.Constant(word.Words)), word.Negated, forSure, fact)],
            AttributeTest.Limit limit => [Holds(
                Expression.Call(
                    reading, s_comparesLimit, Expression.Constant(limit.Comparison), Expression.Constant(limit.Value)),
                negated: false, forSure, fact)],
            AttributeTest.Variable { Binds: true } => [Holds(
                Expression.Property(reading, s_hasValue), negated: false, forSure, fact)],
            AttributeTest.Variable variable => [Joined(
                variable.Name, fact, other => Expression.Call(reading, s_shares, other), variable.Negated, forSure)],
            AttributeTest.VariableLimit limit => [Joined(
                limit.Name, fact,
                other => Expression.Call(reading, s_comparesReading, Expression.Constant(limit.Comparison), other),
                negated: false, forSure)],
            AttributeTest.Every every => every.Tests.SelectMany(next => Of(next, fact, attribute, forSure)),
            _ => throw new InvalidOperationException($"no such test: {test.GetType().Name}"),
        };
    }

    private LambdaExpression Joined(
        string variable, ParameterExpression fact, Func<Expression, Expression> truth, bool negated, bool forSure)
    {
        (ParameterExpression boundFact, string boundAttribute) = _variables[variable];
        Expression value = truth(Read(boundFact, boundAttribute));
        return boundFact == fact
            ? Holds(value, negated, forSure, fact)
            : Holds(value, negated, forSure, boundFact, fact);
    }

    private static MethodCallExpression Read(ParameterExpression fact, string attribute) =>
        Expression.Call(fact, s_read, Expression.Constant(attribute));

    // "May hold" is "not certainly No"; under a negation the two certain answers change places.
    private static LambdaExpression Holds(
        Expression truth, bool negated, bool forSure, params ParameterExpression[] parameters)
    {
        Truth certain = negated == forSure ? Truth.No : Truth.Yes;
        ConstantExpression limit = Expression.Constant(certain);
        return Expression.Lambda(
            forSure ? Expression.Equal(truth, limit) : Expression.NotEqual(truth, limit), parameters);
    }

    private static MethodInfo MethodOf<T>(string name, params Type[] parameters) =>
        typeof(T).GetMethod(name, parameters)
        ?? throw new InvalidOperationException($"{typeof(T).Name} has no method {name}");
}
