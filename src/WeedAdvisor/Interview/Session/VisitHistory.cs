using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Session;

/// <summary>
/// Where an interview stands at one moment: all that an edit may change, and the page it was made on.
/// </summary>
/// <param name="Visit">The visit.</param>
/// <param name="Notes">What is remembered beside the answers, by area id.</param>
/// <param name="AreaIndex">The area, from 0.</param>
/// <param name="Question">The question; null for the page at which the interview of that area stands.</param>
public sealed record InterviewMoment(
    Visit Visit,
    ImmutableDictionary<string, QuestionNotes> Notes,
    int AreaIndex,
    string? Question
);

/// <summary>One edit of a visit.</summary>
/// <param name="Name">What was edited, in a few words: <c>weeds of Yard block 4</c>.</param>
/// <param name="Before">How it stood before.</param>
/// <param name="After">How it stood afterwards.</param>
public sealed record VisitEdit(string Name, InterviewMoment Before, InterviewMoment After);

/// <summary>
/// The edits of a visit, done and undone, the last ones on top. Every edit holds the whole visit as it was, so that
/// nothing has to be worked out backwards; the parts that did not change are shared.
/// </summary>
/// <param name="Done">The edits that can be undone.</param>
/// <param name="Undone">The edits that can be done again.</param>
public sealed record VisitHistory(ImmutableStack<VisitEdit> Done, ImmutableStack<VisitEdit> Undone)
{
    /// <summary>Nothing was edited.</summary>
    public static VisitHistory Empty { get; } = new([], []);

    /// <summary>With one more edit. What was undone before it cannot be done again.</summary>
    public VisitHistory With(VisitEdit edit) => new(Done.Push(edit), []);

    /// <summary>With the last edit undone; null when there is none.</summary>
    public (VisitHistory History, VisitEdit Edit)? Undo() =>
        Done.IsEmpty ? null : (new VisitHistory(Done.Pop(out VisitEdit edit), Undone.Push(edit)), edit);

    /// <summary>With the edit undone last done again; null when there is none.</summary>
    public (VisitHistory History, VisitEdit Edit)? Redo() =>
        Undone.IsEmpty ? null : (new VisitHistory(Done.Push(Undone.Peek()), Undone.Pop(out VisitEdit edit)), edit);
}
