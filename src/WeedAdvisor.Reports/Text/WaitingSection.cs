using System.Collections.Immutable;
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
        foreach ((ImmutableArray<NeedWords> needs, ImmutableArray<string> actions) in Groups(names, area.Waiting))
            page.Write(4, "- ", $"after {Listed(needs)}: {string.Join("; ", names.ActionsInOrder(actions))}");
    }

    /// <summary>The waiting actions by what they need: fewest needs first, then in ordinal order.</summary>
    private static IEnumerable<(ImmutableArray<NeedWords> Needs, ImmutableArray<string> Actions)> Groups(
        Names names, ImmutableArray<WaitingAction> waiting) =>
        waiting
            .Select(action => (Needs: NeedsOf(names, action), action.Action))
            .GroupBy(item => Listed(item.Needs), StringComparer.Ordinal)
            .OrderBy(group => group.First().Needs.Length)
            .ThenBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => (group.First().Needs, (ImmutableArray<string>)[.. group.Select(item => item.Action)]));

    private static ImmutableArray<NeedWords> NeedsOf(Names names, WaitingAction action) =>
        [.. action.Needs.Order().Select(names.NeedOfAny).Distinct()];

    private static string Listed(ImmutableArray<NeedWords> needs) => needs switch
    {
        [] => "nothing that is known",
        [var only] => only.Short,
        [.. var most, var last] => $"{string.Join(", ", most.Select(need => need.Short))} and {last.Short}",
    };
}
