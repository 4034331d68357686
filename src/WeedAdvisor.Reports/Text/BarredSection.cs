using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Reports.Text;

/// <summary>What must not be used in an area, never before not this way before not yet, grouped by reason.</summary>
internal static class BarredSection
{
    public static void Write(Page page, Names names, AreaAdvice area, DateOnly day)
    {
        if (area.Barred.IsEmpty)
            return;
        page.Heading($"What must not be used here: {names.CountActions([.. area.Barred.Select(b => b.Action)])}");
        (ActionStatus, Severity)? last = null;
        foreach (BarGroup group in BarGroups.Of(names, area.Barred, day))
        {
            if ((group.Status, group.Severity) != last)
                page.Write(2, Title(group));
            last = (group.Status, group.Severity);
            WriteGroup(page, names, group);
        }

        if (area.Barred.Any(action => MoreBars(action) > 0))
            page.Write(2, "(+n): n more rules bar it too; 'weedadvisor why' shows them.");
    }

    private static void WriteGroup(Page page, Names names, BarGroup group)
    {
        page.Write(2, "- ", $"{group.Text}{Figures.Keys(group.Sources)}");
        if (group.End.Length > 0)
            page.Write(6, $"{ActionStatuses.Text(group.Status)}: ", group.End);
        page.Write(6, "why: ", group.Judgement);
        var actions = group.Actions
            .OrderBy(action => names.Action(action.Action), StringComparer.Ordinal)
            .Select(action => Named(names, action));
        string count = names.CountActions([.. group.Actions.Select(action => action.Action)]);
        page.Write(6, $"{count}: {string.Join("; ", actions)}");
    }

    private static string Named(Names names, BarredAction action) => MoreBars(action) is var more and > 0
        ? string.Create(CultureInfo.InvariantCulture, $"{names.Action(action.Action)} (+{more})")
        : names.Action(action.Action);

    private static int MoreBars(BarredAction action) =>
        action.Because.Select(reason => reason.Judgement).Distinct(StringComparer.Ordinal).Count() - 1;

    private static string Title(BarGroup group)
    {
        string why = group.Severity == Severity.Prohibited
            ? "law, label or certain injury stand against it"
            : "it would not work here, or not be worth it";
        return $"{Figures.Sentence(ActionStatuses.Text(group.Status))}, {StatusWords.Of(group.Severity)}: {why}";
    }
}
