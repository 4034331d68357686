using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Limits;

/// <summary>What a limit counts.</summary>
public enum LimitKind
{
    /// <summary>Uses in a year.</summary>
    Uses,

    /// <summary>Active ingredient in a year.</summary>
    Amount,

    /// <summary>Days between two uses.</summary>
    Interval,
}

/// <summary>A limit that keeps one more use of a treatment out, or may do so.</summary>
/// <param name="Kind">What it counts.</param>
/// <param name="Active">ISO common name of the active; null for a limit of the product itself.</param>
/// <param name="Holds">Yes when it keeps the use out for sure; not known otherwise.</param>
/// <param name="Needs">What would have to be known; empty when it holds for sure.</param>
/// <param name="Until">The day from which it no longer does; null when that is not known.</param>
/// <param name="Text">The limit and what it counted, as the beginning of a sentence.</param>
public sealed record LimitVerdict(
    LimitKind Kind, string? Active, Truth Holds, ImmutableArray<Need> Needs, DateOnly? Until, string Text);
