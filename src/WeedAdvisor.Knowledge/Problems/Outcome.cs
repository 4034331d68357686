using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace WeedAdvisor.Knowledge.Problems;

/// <summary>
/// A value, or all that stood in its way. Never both, never neither: what a user caused is no exception.
/// </summary>
/// <typeparam name="T">The value's type.</typeparam>
/// <typeparam name="TRefusal">
/// What says why there is none: a <see cref="Problem"/> with its place in a file, a sentence, or the field at fault.
/// </typeparam>
public sealed record Outcome<T, TRefusal>
    where T : class
    where TRefusal : class
{
    private Outcome(T? value, ImmutableArray<TRefusal> refusals)
    {
        Value = value;
        Refusals = refusals;
    }

    /// <summary>The value; null when it is refused.</summary>
    public T? Value { get; }

    /// <summary>Why there is none, in order; empty when there is a value.</summary>
    public ImmutableArray<TRefusal> Refusals { get; }

    /// <summary>Whether there is a value.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    public bool IsGood => Value is not null;

    /// <summary>A value.</summary>
    public static implicit operator Outcome<T, TRefusal>(T value) => Good(value);

    /// <summary>A refusal.</summary>
    public static implicit operator Outcome<T, TRefusal>(TRefusal refusal) => Bad(refusal);

    /// <summary>A value.</summary>
    public static Outcome<T, TRefusal> Good(T value) => new(value, []);

    /// <summary>Refusals, at least one.</summary>
    /// <exception cref="ArgumentException">There is no refusal.</exception>
    public static Outcome<T, TRefusal> Bad(params IEnumerable<TRefusal> refusals)
    {
        ImmutableArray<TRefusal> all = [.. refusals];
        return all.IsEmpty ? throw new ArgumentException("a refusal needs a reason", nameof(refusals)) : new(null, all);
    }
}
