using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>A value, or the reasons why there is none: whole sentences for the grower. Never both, never neither.</summary>
/// <typeparam name="T">The value's type.</typeparam>
/// <param name="Value">The value; null when refused.</param>
/// <param name="Refusals">What was wrong and what to do; empty when there is a value.</param>
public sealed record WeedingOutcome<T>(T? Value, ImmutableArray<string> Refusals)
    where T : class
{
    /// <summary>Whether there is a value.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    public bool IsGood => Value is not null;

    /// <summary>A value.</summary>
    public static WeedingOutcome<T> Good(T value) => new(value, []);

    /// <summary>Refusals, at least one.</summary>
    /// <exception cref="ArgumentException">There is no refusal.</exception>
    public static WeedingOutcome<T> Bad(params IEnumerable<string> refusals)
    {
        ImmutableArray<string> all = [.. refusals];
        return all.IsEmpty ? throw new ArgumentException("a bad outcome needs a refusal", nameof(refusals)) : new(null, all);
    }
}
