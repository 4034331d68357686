using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Text;

/// <summary>
/// The actions that wait for an answer, grouped by what is needed: those nearest to being clear first. The questions are
/// written out once, above, and named by their ids after that.
/// </summary>
internal static class WaitingSection
{
    public static void Write(Page page, Names names, AreaAdvice area)
    {
        if (area.Waiting.IsEmpty)
            return;
        page.Heading($"What waits for an answer: {names.CountActions([.. area.Waiting.Select(w => w.Action)])}");
        page.Write(2, "What is needed");
        var needed = area.Waiting.SelectMany(wait => wait.Needs).Distinct().Order();
        foreach (NeedWords need in needed.Select(names.NeedOfAny).Distinct())
            page.Write(4, "- ", need.InFull);
        page.Write(2, "What each answer may free; the fewest answers first");
        foreach (WaitingGroup group in WaitingGroup.Of(names, area.Waiting))
            page.Write(4, "- ", $"after {group.Listed}: {string.Join("; ", names.ActionsInOrder(group.Actions))}");
    }
}
