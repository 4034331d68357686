using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Session;

/// <summary>Keeps what is told of earlier days in step with the day of the visit.</summary>
internal static class Lately
{
    /// <summary>
    /// The area with the answer that a use of this week gives: something was put on lately. Who says the opposite and
    /// tells of the use all the same is told so.
    /// </summary>
    /// <returns>The area, and what was changed in a sentence; null when nothing was.</returns>
    public static (VisitArea Area, string? Remark) Settle(KnowledgeBase knowledge, VisitArea area, DateOnly visit)
    {
        if (
            knowledge.QuestionOf(PutOnLately.Question) is null
            || area.WordOf(PutOnLately.Question) == PutOnLately.Yes
            || PutOnLately.LastTold(area, visit) is not { } use
        )
        {
            return (area, null);
        }

        string product = PastProduct.Of(use, knowledge).Name;
        return (
            area.WithAnswer(PutOnLately.Question, new Answer.Words(Knowledge.Readings.WordSet.Of(PutOnLately.Yes))),
            $"Something was put on lately: {product} on {Answering.Date(use.Date!.Value)} is told among the earlier "
                + $"uses."
        );
    }

    /// <summary>
    /// Why the visit cannot be of a day, in a sentence: something is told of a later one. Null when it can.
    /// </summary>
    public static string? WhyNotOn(KnowledgeBase knowledge, Visit visit, DateOnly day)
    {
        foreach (VisitArea area in visit.Areas)
        {
            if ((area.Past ?? []).FirstOrDefault(use => use.Date > day) is { } use)
                return $"{area.Name} tells of a use of {Answering.Date(use.Date!.Value)}, which would lie after the "
                    + $"visit.";
            foreach (Question question in knowledge.Questions.Where(question => question.PastOnly))
            {
                if (area.Answers.GetValueOrDefault(question.Id) is Answer.Date said && said.Value > day)
                    return $"{area.Name} tells of {Answering.Date(said.Value)} ({EditNames.Label(question)}), which "
                        + $"would lie after the visit.";
            }
        }

        return null;
    }
}
