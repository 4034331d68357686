using System.Collections.Immutable;

namespace WeedAdvisor.Knowledge.Judgements;

/// <summary>One condition of a judgement. A closed family: the nested types are all there are.</summary>
public abstract record Pattern
{
    private Pattern() { }

    /// <summary>There is a fact of this kind that passes all tests; the rule holds once for each such fact.</summary>
    /// <param name="Kind">The kind of fact.</param>
    /// <param name="Tests">The tests, in the order written; may be empty.</param>
    public sealed record Fact(FactKind Kind, ImmutableArray<AttributeCondition> Tests) : Pattern
    {
        /// <inheritdoc/>
        public bool Equals(Fact? other) => other is not null && Kind == other.Kind && Tests.SequenceEqual(other.Tests);

        /// <inheritdoc/>
        public override int GetHashCode() =>
            Tests.Aggregate(Kind.GetHashCode(), (hash, test) => HashCode.Combine(hash, test));
    }

    /// <summary>The finding has been made.</summary>
    /// <param name="Id">The finding's id.</param>
    public sealed record HasFinding(string Id) : Pattern;

    /// <summary>There is no such fact. Variables bound before may be used inside; none is bound.</summary>
    /// <param name="Inner">A <see cref="Fact"/> or a <see cref="HasFinding"/>.</param>
    public sealed record None(Pattern Inner) : Pattern;

    /// <summary>
    /// There is at least one such fact; the rule holds once, however many there are. No variable is bound.
    /// </summary>
    /// <param name="Inner">A <see cref="Fact"/> or a <see cref="HasFinding"/>.</param>
    public sealed record Any(Pattern Inner) : Pattern;
}

/// <summary>A test on a named attribute.</summary>
/// <param name="Attribute">The attribute's name, such as <c>allowed-under</c>.</param>
/// <param name="Test">The test.</param>
public sealed record AttributeCondition(string Attribute, AttributeTest Test);
