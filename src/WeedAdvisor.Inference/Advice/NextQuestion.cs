using System.Collections.Immutable;

namespace WeedAdvisor.Inference.Advice;

/// <summary>What one answer would settle.</summary>
/// <param name="Answer">The answer's id.</param>
/// <param name="Brings">Actions that come among the first things to do, in order.</param>
/// <param name="Drops">Actions that are no longer among them, in order.</param>
/// <param name="Reorders">Whether the same stand there in another order.</param>
public sealed record AnswerOutcome(
    string Answer,
    ImmutableArray<string> Brings,
    ImmutableArray<string> Drops,
    bool Reorders
)
{
    /// <summary>Of what it drops, what may then not be done at all; the rest only makes room.</summary>
    public ImmutableArray<string> Gone { get; init; } = [];
}

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

    /// <summary>
    /// What each answer would settle of the first things to do, in the order of the answers; empty where it was not
    /// asked for (<see cref="QuestionOutcomes"/>).
    /// </summary>
    public ImmutableArray<AnswerOutcome> Outcomes { get; init; } = [];
}
