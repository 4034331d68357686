using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Session;

/// <summary>
/// Answers for the whole nursery: they stand once at the head of the visit, and an area may say otherwise.
/// </summary>
public static class HeadAnswers
{
    /// <summary>
    /// Whether an answer given in an area now is one for the whole nursery: unless the area has said otherwise, or is
    /// about to.
    /// </summary>
    /// <param name="visit">The visit.</param>
    /// <param name="area">The area.</param>
    /// <param name="notes">What is remembered of the area.</param>
    /// <param name="question">The question.</param>
    public static bool IsForAll(Visit visit, VisitArea area, QuestionNotes notes, Question question) =>
        question.IsOfNursery
        && !notes.OnlyHere.Contains(question.Id)
        && Equals(visit.Head.GetValueOrDefault(question.Id), area.Answers.GetValueOrDefault(question.Id));

    /// <summary>
    /// How it is with an answer in an area, in words: given for the whole nursery, or for this area alone. Null when
    /// that goes without saying.
    /// </summary>
    public static string? Told(InterviewSession session, Question question) =>
        !question.IsOfNursery || session.Visit.Areas.Length < 2 ? null
        : session.IsForAll(question) ? "for the whole nursery"
        : $"for {session.Area.Name} alone";
}
