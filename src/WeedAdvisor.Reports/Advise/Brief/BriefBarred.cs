using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.Brief;

/// <summary>What must not be used: the reasons with how many they bar, and names only where they are few.</summary>
internal static class BriefBarred
{
    private const int MostGroups = 6;
    private const int FewNames = 3;

    public static IEnumerable<Block> Of(BriefStyle style, AreaAdvice area)
    {
        if (area.Barred.IsEmpty)
            yield break;
        Names names = style.Names;
        yield return Heading.Section(
            $"What must not be used here: {names.CountActions([.. area.Barred.Select(b => b.Action)])}"
        );
        foreach (var status in BarGroups.Of(names, area.Barred, style.Day).GroupBy(group => group.Status))
        {
            yield return new Heading(HeadingLevel.Minor, Figures.Sentence(ActionStatuses.Text(status.Key))).At(2);
            yield return new ItemList([.. Items(style, [.. status])]).At(2);
        }
    }

    private static IEnumerable<Item> Items(BriefStyle style, BarGroup[] groups)
    {
        int shown = groups.Length <= MostGroups + 1 ? groups.Length : MostGroups;
        foreach (BarGroup group in groups.Take(shown))
            yield return ItemOf(style, group);
        if (groups.Length > shown)
        {
            string[] rest = [.. groups.Skip(shown).SelectMany(group => group.Actions).Select(action => action.Action)];
            yield return new Item(Item.Dash, $"{style.Names.CountActions(rest)} for other reasons");
        }
    }

    private static Item ItemOf(BriefStyle style, BarGroup group)
    {
        string[] actions = [.. group.Actions.Select(action => action.Action)];
        string end = group.End.Length > 0 ? $", {group.End}" : "";
        string head = $"{style.Names.CountActions(actions)}, {StatusWords.Of(group.Severity)}{end}";
        return new Item(Item.Dash, $"{head}: {group.Text}{style.Keys(group.Sources)}")
        {
            Below =
                actions.Length <= FewNames
                    ? [new Paragraph(string.Join("; ", style.Names.ActionsInOrder(actions))).At(4)]
                    : [],
        };
    }
}
