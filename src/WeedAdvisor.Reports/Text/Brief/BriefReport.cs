using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Reports.Text.Brief;

/// <summary>
/// The advice on a few pages: the best actions of each group, what is said of several once, the rest counted. What it
/// leaves out it says so, and where to find it.
/// </summary>
internal static class BriefReport
{
    private const int MostNames = 4;

    public static void Write(Page page, Names names, KnowledgeBase knowledge, VisitAdvice advice, bool cite)
    {
        if (advice.Areas.Any(area => Safety.NamesTreatment(area, knowledge)))
            SafetySection.Write(page);
        var told = new Told();
        foreach (AreaAdvice area in advice.Areas)
        {
            var style = new BriefStyle(names, advice.Visit.Date, area.Area, area.Reading.IsForPots, cite);
            AreaHead.Write(page, names, area.Area);
            KeepOutSection.Write(page, names, area, advice.Visit.Date);
            QuestionSection.Write(page, area);
            BriefActions.Write(page, style, area, told);
            BriefFindings.WriteCautions(page, style, area);
            BriefFindings.Write(page, area);
            BriefWaiting.Write(page, names, area);
            PossibleSection.Write(page, names, area, advice.Visit.Date, MostNames);
            BriefBarred.Write(page, style, area);
            NotAdvisedSection.Write(page, names, area, MostNames);
            BriefFindings.WriteConflicts(page, style, area);
            FindingSection.WriteGaps(page, area);
        }

        WriteKey(page, names, advice);
    }

    private static void WriteKey(Page page, Names names, VisitAdvice advice)
    {
        ClearAction[] clear = [.. advice.Areas.SelectMany(area => area.Clear)];
        page.Heading("How to read this");
        if (clear.Length > 0)
            page.Write(2, "- ", "In brackets behind an action: its merit, from 0 to 1. It ranks them, best first.");
        if (clear.Any(action => Costs.IsInvented(names.Record(action.Action))))
            page.Write(2, "- ", "Costs rest on invented figures. Put your own in their place.");
        page.Write(2, "- ", "Everything: 'weedadvisor advise VISIT --full'.");
        page.Write(2, "- ", "All of one action: 'weedadvisor why VISIT ACTION'.");
        if (clear.Any(action => names.IsTreatment(action.Action)))
            page.Write(2, "- ", "A chemical that is only named here: read all of it there before you use it.");
    }
}

/// <summary>What every part of an area's page needs.</summary>
/// <param name="Names">Where names come from.</param>
/// <param name="Day">The day of the visit.</param>
/// <param name="Area">The area.</param>
/// <param name="IsForPots">Whether the place holds pots; null when the place is not told.</param>
/// <param name="Cite">Whether sources are named.</param>
internal sealed record BriefStyle(Names Names, DateOnly Day, VisitArea Area, bool? IsForPots, bool Cite)
{
    /// <summary>Keys of sources when they are wanted.</summary>
    public string Keys(ImmutableArray<string> sources) => Cite ? Figures.Keys(sources) : "";
}
