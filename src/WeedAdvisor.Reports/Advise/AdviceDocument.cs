using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Advise.Brief;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>
/// The advice on a visit. It reads from what is needed first to what explains it: the next question, what to do, then
/// why, what waits and what must not be done.
/// </summary>
public static class AdviceDocument
{
    /// <summary>The document.</summary>
    /// <param name="advice">The advice.</param>
    /// <param name="knowledge">The knowledge, for the names of things.</param>
    /// <param name="full">Whether everything is told, or what a grower needs first.</param>
    /// <param name="withSources">Whether the sources are named, and cited in full at the end.</param>
    public static Document Of(VisitAdvice advice, KnowledgeBase knowledge, bool full = false, bool withSources = false)
    {
        var names = new Names(knowledge);
        Visit visit = advice.Visit;
        return new Document(
            $"Weed advice for {visit.Nursery ?? "a nursery without a name"}",
            [
                .. visit.Title is { } title ? [new Paragraph(title)] : (Block[])[],
                new Paragraph($"Visit {visit.Id}, {Figures.Day(visit.Date)}; knowledge {advice.Knowledge.Brief}"),
                .. advice.Areas.Length > 1 ? FirstThings.Of(names, advice) : [],
                .. full
                    ? advice.Areas.SelectMany(area => InFull(area, names, knowledge, visit.Date))
                    : BriefReport.Of(names, knowledge, advice, withSources),
                .. withSources ? SourceSection.Of(knowledge, SourceSection.KeysOf(advice)) : [],
            ]);
    }

    private static IEnumerable<Block> InFull(AreaAdvice area, Names names, KnowledgeBase knowledge, DateOnly day) =>
    [
        AreaHead.Of(names, area.Area),
        .. KeepOutSection.Of(names, area, day),
        .. QuestionSection.Of(area),
        .. ActionSection.Of(names, day, area),
        .. Safety.NamesTreatment(area, knowledge) ? SafetyBlocks.Standing() : [],
        .. FindingSection.Of(area),
        .. FindingSection.Cautions(area),
        .. WaitingSection.Of(names, area),
        .. PossibleSection.Of(names, area, day),
        .. BarredSection.Of(names, area, day),
        .. NotAdvisedSection.Of(names, area),
        .. FindingSection.Conflicts(names, area),
        .. FindingSection.Gaps(area),
    ];
}
