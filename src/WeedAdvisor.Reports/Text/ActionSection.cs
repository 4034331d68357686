using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Reports.Text;

/// <summary>The clear actions, grouped by when they are done, best first.</summary>
internal static class ActionSection
{
    public static void Write(Page page, Names names, DateOnly day, AreaAdvice area)
    {
        string basis = Names.CostBasis(PlaceOf(area.Area));
        foreach (ActionGroup group in ActionGroup.Of(area))
        {
            page.Heading(group.Title);
            if (group.Actions.IsEmpty)
                page.Write(2, "Nothing is clear to do now.");
            foreach (ClearAction action in group.Actions)
                ActionBlock.Write(page, names, day, action, basis, names.Dates(action.Action, area.Area, day));
        }
    }

    /// <summary>The kind of place that the area is, when it is known to be one.</summary>
    public static string? PlaceOf(VisitArea area) =>
        area.Answers.GetValueOrDefault("place") is Answer.Words { Value: { Count: 1 } place } ? First(place) : null;

    private static string First(WordSet words) => words.First();
}
