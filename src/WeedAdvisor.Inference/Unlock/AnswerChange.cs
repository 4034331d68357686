using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Unlock;

/// <summary>One answer that would be another.</summary>
/// <param name="Question">The question.</param>
/// <param name="Now">What is told now; null where nothing is.</param>
/// <param name="Then">The other answer.</param>
public sealed record AnswerChange(Question Question, Answer? Now, Answer Then)
{
    /// <summary>Whether nothing is told of it yet, so that the answer may be true already.</summary>
    public bool IsUntold => Now is null or Answer.NotKnown;

    /// <summary>Who can bring it about; null where it is only to be told.</summary>
    public ChangedBy? By => IsUntold ? null : Question.ChangedBy;
}

/// <summary>Answers that together would change how an action stands.</summary>
/// <param name="Changes">The answers, in the order of asking.</param>
/// <param name="Status">How the action would stand.</param>
public sealed record AnswerSet(ImmutableArray<AnswerChange> Changes, Advice.ActionStatus Status)
{
    /// <summary>The area with these answers.</summary>
    public AreaCase On(AreaCase looked) =>
        looked with
        {
            Area = looked.Area.Taking(Changes.Select(change => (change.Question.Id, change.Then))),
        };
}
