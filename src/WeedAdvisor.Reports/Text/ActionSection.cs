using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Reports.Text;

/// <summary>The clear actions, grouped by when they are done, best first.</summary>
internal static class ActionSection
{
    private static readonly (string When, string Title)[] s_groups =
    [
        ("now", "What to do now"),
        ("season", "What to do this season"),
        ("standing", "Standing habits"),
    ];

    public static void Write(Page page, Names names, DateOnly day, AreaAdvice area)
    {
        string basis = Names.CostBasis(PlaceOf(area.Area));
        foreach ((string when, string title) in s_groups)
        {
            ClearAction[] actions = [.. area.Clear.Where(action => action.When == when)];
            if (actions.Length == 0 && when != "now")
                continue;
            page.Heading(title);
            if (actions.Length == 0)
                page.Write(2, "Nothing is clear to do now.");
            foreach (ClearAction action in actions)
                ActionBlock.Write(page, names, day, action, basis, names.Dates(action.Action, area.Area, day));
        }
    }

    private static string? PlaceOf(VisitArea area) =>
        area.Answers.GetValueOrDefault("place") is Answer.Words { Value: { Count: 1 } place } ? First(place) : null;

    private static string First(WordSet words) => words.First();
}
