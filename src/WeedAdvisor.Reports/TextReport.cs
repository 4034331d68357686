using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Text;
using WeedAdvisor.Reports.Text.Brief;

namespace WeedAdvisor.Reports;

/// <summary>How an advice is laid out as text.</summary>
/// <param name="Width">Columns of the page.</param>
/// <param name="WithSources">Whether the sources are named, and cited in full at the end.</param>
/// <param name="Full">Whether everything is shown, or what a grower needs first.</param>
public sealed record TextLayout(int Width = 80, bool WithSources = false, bool Full = false);

/// <summary>
/// Advice as plain text for people. It reads from what is needed first to what explains it: the next question, what to
/// do, then why, what waits and what must not be done. The same advice gives the same text everywhere.
/// </summary>
public static class TextReport
{
    /// <summary>The advice as text; lines end with a line feed.</summary>
    public static string Of(VisitAdvice advice, KnowledgeBase knowledge, TextLayout layout)
    {
        var page = new Page(layout.Width);
        var names = new Names(knowledge);
        WriteTitle(page, advice);
        if (advice.Areas.Length > 1)
            FirstThings.Write(page, names, advice);
        if (layout.Full)
            WriteAreas(page, names, knowledge, advice);
        else
            BriefReport.Write(page, names, knowledge, advice, layout.WithSources);
        if (layout.WithSources)
            SourceSection.Write(page, knowledge, SourceSection.KeysOf(advice));
        return page.ToString();
    }

    private static void WriteTitle(Page page, VisitAdvice advice)
    {
        Visit visit = advice.Visit;
        page.Write(0, $"Weed advice for {visit.Nursery ?? "a nursery without a name"}");
        if (visit.Title is { } title)
            page.Write(0, title);
        page.Write(0, $"Visit {visit.Id}, {Figures.Day(visit.Date)}; knowledge {advice.Knowledge.Brief}");
    }

    private static void WriteAreas(Page page, Names names, KnowledgeBase knowledge, VisitAdvice advice)
    {
        foreach (AreaAdvice area in advice.Areas)
        {
            AreaHead.Write(page, names, area.Area);
            KeepOutSection.Write(page, names, area, advice.Visit.Date);
            QuestionSection.Write(page, area);
            ActionSection.Write(page, names, advice.Visit.Date, area);
            if (Safety.NamesTreatment(area, knowledge))
                SafetySection.Write(page);
            FindingSection.Write(page, area);
            FindingSection.WriteCautions(page, area);
            WaitingSection.Write(page, names, area);
            PossibleSection.Write(page, names, area, advice.Visit.Date);
            BarredSection.Write(page, names, area, advice.Visit.Date);
            NotAdvisedSection.Write(page, names, area);
            FindingSection.WriteConflicts(page, names, area);
            FindingSection.WriteGaps(page, area);
        }
    }
}
