using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>The clear actions, grouped by when they are done, best first.</summary>
internal static class ActionSection
{
    public static IEnumerable<Block> Of(Names names, DateOnly day, AreaAdvice area)
    {
        string basis = Names.CostBasis(area.Reading.IsForPots);
        foreach (ActionGroup group in ActionGroup.Of(area))
        {
            yield return Heading.Section(group.Title);
            if (group.Actions.IsEmpty)
                yield return new Paragraph("Nothing is clear to do now.").At(2);
            foreach (
                Block block in group.Actions.SelectMany(action =>
                    ActionBlock.Of(names, day, action, basis, names.Dates(action.Action, area.Area, day))
                )
            )
            {
                yield return block;
            }
        }
    }
}
