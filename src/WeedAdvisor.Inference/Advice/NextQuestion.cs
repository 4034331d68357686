using System.Collections.Immutable;

namespace WeedAdvisor.Inference.Advice;

/// <summary>The question to ask next.</summary>
/// <param name="Id">The question's id.</param>
/// <param name="Text">The question.</param>
/// <param name="Why">Why it is asked now.</param>
public sealed record NextQuestion(string Id, string Text, string Why)
{
    /// <summary>Whether the whole nursery has one answer.</summary>
    public bool IsOfNursery { get; init; }

    /// <summary>Actions that an answer may bring among the first things to do, in ordinal order of id.</summary>
    public ImmutableArray<string> MayBring { get; init; } = [];
}
