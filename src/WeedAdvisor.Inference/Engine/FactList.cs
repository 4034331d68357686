using System.Collections.Immutable;
using WeedAdvisor.Inference.Facts;

namespace WeedAdvisor.Inference.Engine;

/// <summary>
/// All facts of one type, as one fact: what asks whether there is any such fact, or none, matches the list. Two lists
/// of one type are the same fact, whatever stands in them.
/// </summary>
/// <remarks>
/// The engine's own negations and collections know two truths, or lose track when two equal ones stand in a rule; over
/// a list the three-valued truth is one loop.
/// </remarks>
internal abstract class FactList(ImmutableArray<Fact> facts) : IEquatable<FactList>
{
    /// <summary>The facts, in ordinal order of key.</summary>
    public ImmutableArray<Fact> Facts { get; } = facts;

    /// <summary>Whether the other holds the same facts, of which the same is known.</summary>
    public bool SaysTheSame(FactList other) =>
        Facts.Length == other.Facts.Length && Facts.Zip(other.Facts).All(pair => pair.First.SaysTheSame(pair.Second));

    /// <inheritdoc/>
    public bool Equals(FactList? other) => other is not null && GetType() == other.GetType();

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as FactList);

    /// <inheritdoc/>
    public override int GetHashCode() => GetType().GetHashCode();
}

/// <summary>All facts of a type.</summary>
/// <typeparam name="T">The type; a type of list of its own lets the engine keep the lists apart.</typeparam>
internal sealed class FactList<T>(ImmutableArray<Fact> facts) : FactList(facts)
    where T : Fact;
