using WeedAdvisor.Inference;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.WhatIf;

namespace WeedAdvisor.Interview.Pages;

/// <summary>What would be otherwise with another answer: on a copy of the area; the visit stays as it is.</summary>
public static class WhatIfPage
{
    /// <summary>The page.</summary>
    /// <param name="session">The interview.</param>
    /// <param name="question">The question.</param>
    /// <param name="answer">The other answer.</param>
    public static IEnumerable<Block> Of(InterviewSession session, Question question, Answer answer)
    {
        AreaCase then = session.Looked with
        {
            Area = session.Area with { Answers = session.Area.Answers.SetItem(question.Id, answer) },
        };
        return new WhatIfArea(session.Knowledge).Of(
            session.Advice,
            session.AdviceOn(then),
            [(question, answer)],
            full: true
        );
    }
}
