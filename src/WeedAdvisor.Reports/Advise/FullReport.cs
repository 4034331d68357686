using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Advise.OnePage;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>Everything that the advice says of an area.</summary>
internal static class FullReport
{
    /// <summary>The page of one area.</summary>
    public static IEnumerable<Block> OfArea(Names names, KnowledgeBase knowledge, DateOnly day, AreaAdvice area)
    {
        var shared = SharedCautions.Of(names, area);
        return
        [
            AreaHead.Of(names, area),
            .. KeepOutSection.Of(names, area, day),
            .. HeldSection.InFull(names, area, day),
            .. QuestionSection.Of(names, area),
            .. ActionSection.Of(names, day, area, shared),
            .. Safety.NamesTreatment(area, knowledge) ? SafetyBlocks.Standing() : [],
            .. shared.Blocks(),
            .. FindingSection.Of(area),
            .. FindingSection.Cautions(area),
            .. AreaNotes.Blocks(names, area.Reading),
            .. WaitingSection.Of(names, area),
            .. PossibleSection.Of(names, area, day),
            .. BarredSection.Of(names, area, day),
            .. NotAdvisedSection.Of(names, area),
            .. FindingSection.Conflicts(names, area),
            .. FindingSection.Gaps(area),
        ];
    }
}
