using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Session;

/// <summary>
/// Takes answers out of an area when their question stops applying (the sides of a house that is now open sky), and
/// puts them back when it applies again. An answer that no longer fits must not reach the advice or the file.
/// </summary>
public static class AnswerParking
{
    /// <summary>The area with only the answers that may apply, and the notes that hold the others.</summary>
    public static (VisitArea Area, QuestionNotes Notes) Settle(
        KnowledgeBase knowledge,
        VisitArea area,
        QuestionNotes notes
    )
    {
        // Questions depend on earlier ones, so one pass in the order of asking settles almost everything.
        for (int pass = 0; pass < knowledge.Questions.Length; pass++)
        {
            (VisitArea nextArea, QuestionNotes nextNotes) = Pass(knowledge, area, notes);
            if (ReferenceEquals(nextArea, area))
                break;
            (area, notes) = (nextArea, nextNotes);
        }

        return (area, notes);
    }

    private static (VisitArea Area, QuestionNotes Notes) Pass(
        KnowledgeBase knowledge,
        VisitArea area,
        QuestionNotes notes
    )
    {
        var told = new QuestionsThatApply(knowledge, area);
        foreach (Question question in knowledge.Questions)
        {
            if (question.AskedWhen.IsEmpty)
                continue;
            string id = question.Id;
            Truth applies = told.Applies(question);
            if (applies == Truth.No && area.Answers.TryGetValue(id, out Answer? idle))
            {
                area = area with { Answers = area.Answers.Remove(id) };
                notes = notes with { Parked = notes.Parked.SetItem(id, idle) };
                told = new QuestionsThatApply(knowledge, area);
            }
            else if (
                applies == Truth.Yes
                && notes.Parked.TryGetValue(id, out Answer? kept)
                && !area.Answers.ContainsKey(id)
            )
            {
                area = area with { Answers = area.Answers.SetItem(id, kept) };
                notes = notes with { Parked = notes.Parked.Remove(id) };
                told = new QuestionsThatApply(knowledge, area);
            }
        }

        return (area, notes);
    }
}
