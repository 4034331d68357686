using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Text.Brief;

/// <summary>What must not be used: the reasons with how many they bar, and names only where they are few.</summary>
internal static class BriefBarred
{
    private const int MostGroups = 6;
    private const int FewNames = 3;

    public static void Write(Page page, BriefStyle style, AreaAdvice area)
    {
        if (area.Barred.IsEmpty)
            return;
        Names names = style.Names;
        page.Heading($"What must not be used here: {names.CountActions([.. area.Barred.Select(b => b.Action)])}");
        foreach (var status in BarGroups.Of(names, area.Barred, style.Day).GroupBy(group => group.Status))
            WriteStatus(page, style, status.Key, [.. status]);
    }

    private static void WriteStatus(Page page, BriefStyle style, ActionStatus status, BarGroup[] groups)
    {
        page.Write(2, Figures.Sentence(ActionStatuses.Text(status)));
        int shown = groups.Length <= MostGroups + 1 ? groups.Length : MostGroups;
        foreach (BarGroup group in groups.Take(shown))
            WriteGroup(page, style, group);
        if (groups.Length > shown)
        {
            string[] rest = [.. groups.Skip(shown).SelectMany(group => group.Actions).Select(action => action.Action)];
            page.Write(2, "- ", $"{style.Names.CountActions(rest)} for other reasons");
        }
    }

    private static void WriteGroup(Page page, BriefStyle style, BarGroup group)
    {
        string[] actions = [.. group.Actions.Select(action => action.Action)];
        string end = group.End.Length > 0 ? $", {group.End}" : "";
        string head = $"{style.Names.CountActions(actions)}, {StatusWords.Of(group.Severity)}{end}";
        page.Write(2, "- ", $"{head}: {group.Text}{style.Keys(group.Sources)}");
        if (actions.Length <= FewNames)
            page.Write(6, string.Join("; ", style.Names.ActionsInOrder(actions)));
    }
}
