using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>What must not be used in an area, never before not this way before not yet, grouped by reason.</summary>
internal static class BarredSection
{
    private const int Left = 2,
        Inner = 4;

    public static IEnumerable<Block> Of(Names names, AreaAdvice area, DateOnly day)
    {
        if (area.Barred.IsEmpty)
            yield break;
        yield return Heading.Section(
            $"What must not be used here: {names.CountActions([.. area.Barred.Select(b => b.Action)])}"
        );
        (ActionStatus, Severity)? last = null;
        foreach (BarGroup group in BarGroups.Of(names, area.Barred, day))
        {
            if ((group.Status, group.Severity) != last)
                yield return new Heading(HeadingLevel.Minor, Title(group)).At(Left);
            last = (group.Status, group.Severity);
            yield return new ItemList([ItemOf(names, group)]).At(Left);
        }

        if (area.Barred.Any(action => MoreBars(action) > 0))
            yield return new Paragraph("(+n): n more rules bar it too; 'weedadvisor why' shows them.").At(Left);
    }

    private static Item ItemOf(Names names, BarGroup group)
    {
        IEnumerable<string> actions = group
            .Actions.OrderBy(action => names.Action(action.Action), StringComparer.Ordinal)
            .Select(action => NameOf(names, action));
        string count = names.CountActions([.. group.Actions.Select(action => action.Action)]);
        return new Item(Item.Dash, $"{group.Text}{Figures.Keys(group.Sources)}")
        {
            Below =
            [
                .. group.End.Length > 0
                    ? [new Keyed($"{ActionStatuses.Text(group.Status)}: ", group.End).At(Inner)]
                    : (Block[])[],
                new Keyed("why: ", group.Judgement).At(Inner),
                new Paragraph($"{count}: {string.Join("; ", actions)}").At(Inner),
            ],
        };
    }

    private static string NameOf(Names names, BarredAction action) =>
        MoreBars(action) is var more and > 0
            ? string.Create(CultureInfo.InvariantCulture, $"{names.Action(action.Action)} (+{more})")
            : names.Action(action.Action);

    private static int MoreBars(BarredAction action) =>
        action.Because.Select(reason => reason.Judgement).Distinct(StringComparer.Ordinal).Count() - 1;

    private static string Title(BarGroup group)
    {
        string why =
            group.Severity == Severity.Prohibited
                ? "law, label or certain injury stand against it"
                : "it would not work here, or not be worth it";
        return $"{Figures.Sentence(ActionStatuses.Text(group.Status))}, {StatusWords.Of(group.Severity)}: {why}";
    }
}
