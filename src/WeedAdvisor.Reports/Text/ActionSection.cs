using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Text;

/// <summary>The clear actions, grouped by when they are done, best first.</summary>
internal static class ActionSection
{
    public static void Write(Page page, Names names, DateOnly day, AreaAdvice area)
    {
        string basis = Names.CostBasis(area.Reading.IsForPots);
        foreach (ActionGroup group in ActionGroup.Of(area))
        {
            page.Heading(group.Title);
            if (group.Actions.IsEmpty)
                page.Write(2, "Nothing is clear to do now.");
            foreach (ClearAction action in group.Actions)
                ActionBlock.Write(page, names, day, action, basis, names.Dates(action.Action, area.Area, day));
        }
    }
}
