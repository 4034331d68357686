using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Knowledge.Judgements;

/// <summary>A condition on one attribute of one fact. A closed family: the nested types are all there are.</summary>
public abstract record AttributeTest
{
    private AttributeTest() { }

    /// <summary>
    /// The attribute is one of the words, or (negated) none of them. A set attribute holds, or holds none, of them.
    /// </summary>
    /// <param name="Words">The words; never empty.</param>
    /// <param name="Negated">True for <c>not</c> and <c>lacks</c>.</param>
    public sealed record Word(WordSet Words, bool Negated) : AttributeTest;

    /// <summary>The attribute's number compares with a fixed limit.</summary>
    /// <param name="Comparison">The comparison.</param>
    /// <param name="Value">The limit, in the attribute's unit.</param>
    public sealed record Limit(Comparison Comparison, decimal Value) : AttributeTest;

    /// <summary>
    /// <c>$name</c>: the first use in a rule binds the variable to the attribute, a later use must share a word with
    /// it (or be the same number); negated (<c>lacks: $name</c>), it must share none.
    /// </summary>
    /// <param name="Name">The variable's name, without the dollar sign.</param>
    /// <param name="Binds">True at the variable's first use.</param>
    /// <param name="Negated">True for <c>lacks</c> and <c>not</c>; never together with
    /// <paramref name="Binds"/>.</param>
    public sealed record Variable(string Name, bool Binds, bool Negated) : AttributeTest;

    /// <summary>The attribute's number compares with a bound variable's number.</summary>
    /// <param name="Comparison">The comparison: attribute on the left, variable on the right.</param>
    /// <param name="Name">The variable's name, bound earlier in the rule.</param>
    public sealed record VariableLimit(Comparison Comparison, string Name) : AttributeTest;

    /// <summary>All of several tests.</summary>
    /// <param name="Tests">The tests, at least two.</param>
    public sealed record Every(ImmutableArray<AttributeTest> Tests) : AttributeTest
    {
        /// <inheritdoc/>
        public bool Equals(Every? other) => other is not null && Tests.SequenceEqual(other.Tests);

        /// <inheritdoc/>
        public override int GetHashCode() => Tests.Aggregate(0, (hash, test) => HashCode.Combine(hash, test));
    }
}
