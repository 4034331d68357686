using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

/// <summary>Why an action stands where it stands, area by area: everything for it, against it and in its way.</summary>
public static class WhyDocument
{
    /// <summary>The document.</summary>
    /// <param name="advice">The advice.</param>
    /// <param name="action">The action.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="full">Whether to show every condition with what it asked and what it found.</param>
    public static Document Of(VisitAdvice advice, CatalogueAction action, KnowledgeBase knowledge, bool full = false)
    {
        Line title = Line.Of($"{new Named(action.Name)} ({action.Id})") with { Action = action.Id };
        var why = new WhyArea(knowledge);
        return new Document(
            title,
            [
                .. advice.Areas.SelectMany(
                    (area, at) =>
                        (Block[])
                            [
                                .. at == 0 ? [] : (Block[])[new Blank(), new Heading(HeadingLevel.Title, title)],
                                .. Head(advice, area),
                                .. why.Of(area, NearSection.LookedAt(advice.Visit, area), action, full),
                            ]
                ),
            ]
        );
    }

    private static IEnumerable<Block> Head(VisitAdvice advice, AreaAdvice area) =>
        [
            new Paragraph(
                $"{area.Area.Name}, visit {advice.Visit.Id}, {Figures.Day(advice.Visit.Date)}; "
                    + $"knowledge {advice.Knowledge.Brief}"
            ),
            .. LiftedBars.Of(advice.Knowledge),
            new Blank(),
        ];
}
