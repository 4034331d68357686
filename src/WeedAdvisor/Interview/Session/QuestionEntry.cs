using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Interview.Session;

/// <summary>How far a question has got.</summary>
public enum QuestionState
{
    /// <summary>Not asked, or asked and left open.</summary>
    Open,

    /// <summary>Passed over for now; asked again at the end.</summary>
    Skipped,

    /// <summary>The grower does not know.</summary>
    NotKnown,

    /// <summary>Answered.</summary>
    Answered,
}

/// <summary>A question that may apply in the area.</summary>
/// <param name="Question">The question.</param>
/// <param name="State">How far it has got.</param>
/// <param name="Matters">Whether an answer could still change the advice here, or every area is asked it.</param>
public sealed record QuestionEntry(Question Question, QuestionState State, bool Matters)
{
    /// <summary>Whether nothing more is expected of it.</summary>
    public bool IsSettled => State is QuestionState.Answered or QuestionState.NotKnown;

    /// <summary>Whether it is not known and an answer could still change the advice.</summary>
    public bool IsWorthAgain => State == QuestionState.NotKnown && Matters;
}
