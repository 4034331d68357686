using System.Collections.Immutable;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Conditions;

/// <summary>What the variables of a rule stand for in one match.</summary>
/// <param name="Values">Reading by variable name.</param>
internal readonly record struct Bindings(ImmutableDictionary<string, Reading> Values)
{
    /// <summary>No variable is bound.</summary>
    public static Bindings None { get; } = new(ImmutableDictionary.Create<string, Reading>(StringComparer.Ordinal));

    /// <summary>What a variable stands for; absent when it is not bound.</summary>
    public Reading this[string name] => Values.GetValueOrDefault(name, Reading.Absent);

    /// <summary>One more variable.</summary>
    public Bindings With(string name, Reading reading) => new(Values.SetItem(name, reading));

    /// <summary>With the names that a pattern gives to attributes of the fact that it matched.</summary>
    public Bindings With(Pattern.Fact pattern, Fact fact)
    {
        Bindings bound = this;
        foreach ((string attribute, AttributeTest test) in pattern.Tests)
        {
            if (test is AttributeTest.Variable { Binds: true } variable)
                bound = bound.With(variable.Name, fact.Read(attribute));
        }

        return bound;
    }
}
