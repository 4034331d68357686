using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;
using WeedAdvisor.Reports.Why;

namespace WeedAdvisor.Reports.Unlock;

/// <summary>What would have to change before an action stands otherwise, area by area.</summary>
public static class UnlockDocument
{
    /// <summary>The document.</summary>
    public static Document Of(Advisor advisor, VisitAdvice advice, CatalogueAction action)
    {
        Line title = Line.Of($"What would change it: {new Named(action.Name)} ({action.Id})") with
        {
            Action = action.Id,
        };
        var areas = new UnlockArea(advisor);
        return new Document(
            title,
            [
                .. advice.Areas.SelectMany(
                    (area, at) =>
                        (Block[])
                            [
                                .. at == 0 ? [] : (Block[])[new Blank(), new Heading(HeadingLevel.Title, title)],
                                new Paragraph(
                                    $"{area.Area.Name}, visit {advice.Visit.Id}, {Figures.Day(advice.Visit.Date)}; "
                                        + $"knowledge {advice.Knowledge.Brief}"
                                ),
                                .. LiftedBars.Of(advice.Knowledge),
                                new Blank(),
                                .. areas.Of(area, NearSection.LookedAt(advice.Visit, area), action),
                            ]
                ),
            ]
        );
    }
}
