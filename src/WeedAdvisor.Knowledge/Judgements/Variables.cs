namespace WeedAdvisor.Knowledge.Judgements;

/// <summary>Which variables a condition uses that were given their names before.</summary>
public static class Variables
{
    /// <summary>The names of the variables that a test uses and doesn't bind.</summary>
    public static IEnumerable<string> In(AttributeTest test) =>
        test switch
        {
            AttributeTest.Variable { Binds: false } variable => [variable.Name],
            AttributeTest.VariableLimit limit => [limit.Name],
            AttributeTest.Every every => every.Tests.SelectMany(In),
            _ => [],
        };

    /// <summary>The names that a pattern uses and doesn't bind itself.</summary>
    public static IEnumerable<string> In(Pattern pattern) =>
        pattern switch
        {
            Pattern.Fact fact => fact.Tests.SelectMany(one => In(one.Test)).Except(BoundBy(fact)),
            Pattern.None none => In(none.Inner),
            Pattern.Any any => In(any.Inner),
            _ => [],
        };

    /// <summary>The names that a pattern gives, each to an attribute.</summary>
    public static IEnumerable<string> BoundBy(Pattern.Fact fact) =>
        fact
            .Tests.Select(one => one.Test)
            .OfType<AttributeTest.Variable>()
            .Where(variable => variable.Binds)
            .Select(variable => variable.Name);
}
