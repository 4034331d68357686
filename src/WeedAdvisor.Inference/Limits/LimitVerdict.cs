using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Limits;

/// <summary>What one limit says of one more use of a treatment on a day.</summary>
/// <param name="Kind">What it counts.</param>
/// <param name="Active">The active; null for a limit of the product alone.</param>
/// <param name="Holds">Yes when the use would break it, not known when it may.</param>
/// <param name="Needs">What would have to be known; empty unless not known.</param>
/// <param name="Until">The first day on which the use keeps it, as far as is known; null when no day is.</param>
/// <param name="Text">The limit and the uses, as a sentence without its end.</param>
public sealed record LimitVerdict(
    LimitKind Kind,
    string? Active,
    Truth Holds,
    ImmutableArray<Need> Needs,
    DateOnly? Until,
    string Text
)
{
    /// <summary>The limit of a year; null for an interval.</summary>
    public YearlyLimit? Yearly { get; init; }

    /// <summary>What the year has seen so far.</summary>
    public ActiveAmount Used { get; init; }

    /// <summary>
    /// Whether only a part of the published range fits: what is left of the year is less than the highest rate brings.
    /// </summary>
    public bool IsTight { get; init; }
}
