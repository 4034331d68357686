using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Conditions;

/// <summary>Whether a test holds for a reading. Total: every test on every reading has an answer.</summary>
internal static class TestTruth
{
    /// <summary>The truth of a test, with the variables bound so far.</summary>
    public static Truth Of(AttributeTest test, Reading reading, Bindings bindings) =>
        test switch
        {
            AttributeTest.Word word => Maybe(word.Negated, reading.IsAnyOf(word.Words)),
            AttributeTest.Limit limit => reading.Compares(limit.Comparison, limit.Value),
            AttributeTest.Variable { Binds: true } => reading.HasValue,
            AttributeTest.Variable variable => Maybe(variable.Negated, reading.Shares(bindings[variable.Name])),
            AttributeTest.VariableLimit limit => reading.Compares(limit.Comparison, bindings[limit.Name]),
            AttributeTest.Every every => every.Tests.Aggregate(Truth.Yes, (truth, next) =>
                Truths.And(truth, Of(next, reading, bindings))
            ),
            _ => throw new InvalidOperationException($"no such test: {test.GetType().Name}"),
        };

    /// <summary>
    /// What would have to be known to decide the test: the needs of the reading and of the variable compared.
    /// </summary>
    public static IEnumerable<Need> NeedsOf(AttributeTest test, Reading reading, Bindings bindings) =>
        test switch
        {
            AttributeTest.Variable { Binds: false } variable => reading.Needs.Concat(bindings[variable.Name].Needs),
            AttributeTest.VariableLimit limit => reading.Needs.Concat(bindings[limit.Name].Needs),
            AttributeTest.Every every => every.Tests.SelectMany(next => NeedsOf(next, reading, bindings)),
            _ => reading.Needs,
        };

    private static Truth Maybe(bool negated, Truth truth) => negated ? Truths.Not(truth) : truth;
}
