using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace WeedAdvisor.Knowledge.Problems;

/// <summary>A value, or the list of problems that stood in its way. Never both, never neither.</summary>
/// <typeparam name="T">The value's type.</typeparam>
public sealed record Outcome<T>
    where T : class
{
    private Outcome(T? value, ImmutableArray<Problem> problems)
    {
        Value = value;
        Problems = problems;
    }

    /// <summary>The value; null when there are problems.</summary>
    public T? Value { get; }

    /// <summary>The problems, in order of file, line and column; empty when there is a value.</summary>
    public ImmutableArray<Problem> Problems { get; }

    /// <summary>Whether there is a value.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    public bool IsGood => Value is not null;

    /// <summary>A value without problems.</summary>
    public static Outcome<T> Good(T value) => new(value, []);

    /// <summary>Problems, at least one.</summary>
    public static Outcome<T> Bad(IEnumerable<Problem> problems)
    {
        ImmutableArray<Problem> ordered =
        [
            .. problems
                .OrderBy(p => p.Where.File, StringComparer.Ordinal)
                .ThenBy(p => p.Where.Line)
                .ThenBy(p => p.Where.Column)
                .ThenBy(p => p.Found, StringComparer.Ordinal),
        ];
        if (ordered.IsEmpty)
            throw new ArgumentException("a bad outcome needs a problem", nameof(problems));
        return new Outcome<T>(null, ordered);
    }
}
