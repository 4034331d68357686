using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports;

/// <summary>How an advice is laid out as text.</summary>
/// <param name="Width">Columns of the page.</param>
/// <param name="WithSources">Whether the sources are cited in full at the end.</param>
public sealed record TextLayout(int Width = 80, bool WithSources = false);

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
        foreach (AreaAdvice area in advice.Areas)
            WriteArea(page, names, knowledge, advice.Visit, area);
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

    private static void WriteArea(Page page, Names names, KnowledgeBase knowledge, Visit visit, AreaAdvice area)
    {
        page.Gap();
        page.Rule('=');
        page.Write(0, area.Area.Name);
        page.Write(0, WeedsSeen(names, area.Area));
        page.Rule('=');
        QuestionSection.Write(page, area);
        ActionSection.Write(page, names, visit.Date, area);
        if (Safety.NamesTreatment(area, knowledge))
            WriteSafety(page);
        FindingSection.Write(page, area);
        FindingSection.WriteCautions(page, area);
        WaitingSection.Write(page, names, area);
        BarredSection.Write(page, names, area);
        FindingSection.WriteConflicts(page, names, area);
        FindingSection.WriteGaps(page, area);
    }

    private static string WeedsSeen(Names names, VisitArea area)
    {
        if (area.Weeds is not { } weeds)
            return "Weeds: not known";
        if (weeds.IsEmpty)
            return "Weeds: none seen";
        return "Weeds: " + string.Join("; ", weeds.Select(weed => OneWeed(names, weed)));
    }

    private static string OneWeed(Names names, WeedSeen seen)
    {
        string stage = seen.Stage is { } word ? names.Word("stage", word) : "stage not known";
        string cover = seen.CoverPercent is { } percent ? $"{Figures.Plain(percent)} % cover" : "cover not known";
        return $"{names.Weed(seen.Weed)} ({stage}, {cover})";
    }

    private static void WriteSafety(Page page)
    {
        page.Heading("Before any chemical");
        foreach (string line in Safety.StandingLines)
            page.Write(2, "- ", line);
    }
}
