using System.Collections.Immutable;
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
            .. MostTelling(names, day, area),
            .. BarredSection.Of(names, area, day),
            .. NotAdvisedSection.Of(names, area),
            .. FindingSection.Conflicts(names, area),
            .. FindingSection.Gaps(area),
        ];
    }

    // Which of the barred the page names, and why, before all of them by rule.
    private static IEnumerable<Block> MostTelling(Names names, DateOnly day, AreaAdvice area)
    {
        ImmutableArray<BarredLine> lines = PageStyle.Of(names, day, area, cite: false).Barred;
        return lines.IsEmpty
            ? []
            :
            [
                Heading.Section("Chemicals that you may not use here: what counts most"),
                ItemList.Dashes(lines.Select(line => Line.FromString(line.Text))).At(2),
            ];
    }
}
