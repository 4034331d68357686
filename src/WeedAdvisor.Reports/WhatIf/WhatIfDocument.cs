using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.WhatIf;

/// <summary>What would be otherwise if some answers of a visit were other ones.</summary>
public static class WhatIfDocument
{
    /// <summary>The document.</summary>
    /// <param name="now">The advice for the visit as it is.</param>
    /// <param name="then">The advice with the other answers, area by area.</param>
    /// <param name="answers">The other answers.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="full">Whether every action and rule that turns is told.</param>
    public static Document Of(
        VisitAdvice now,
        VisitAdvice then,
        IReadOnlyCollection<(Question Question, Answer Answer)> answers,
        KnowledgeBase knowledge,
        bool full
    )
    {
        var areas = new WhatIfArea(knowledge);
        return new Document(
            "What if",
            [
                new Paragraph(
                    $"Visit {now.Visit.Id}, {Figures.Day(now.Visit.Date)}; knowledge {now.Knowledge.Brief}. The visit "
                        + "stays as it is."
                ),
                .. LiftedBars.Of(now.Knowledge),
                .. now
                    .Areas.Zip(then.Areas)
                    .SelectMany(pair =>
                        (Block[])
                            [
                                new Blank(),
                                new Heading(HeadingLevel.Area, pair.First.Area.Name),
                                .. areas.Of(pair.First, pair.Second, answers, full),
                            ]
                    ),
            ]
        );
    }
}
