using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>
/// What the grower used last, or has the label of, and may not use here now. Never cut; what is said of several is said
/// once.
/// </summary>
internal static class HeldSection
{
    public static IEnumerable<Block> Of(PageStyle style, AreaAdvice area)
    {
        HashSet<string> used = [.. (area.Area.Past ?? []).Select(past => past.Treatment).OfType<string>()];
        HashSet<string> told = [.. area.KeepOut?.Because ?? []];
        Item[] items =
        [
            .. area
                .Barred.Where(one => used.Contains(one.Action) || style.Names.Treatment(one.Action)?.Label is not null)
                .Select(one => (Barred: one, Reason: BarsInOrder.Of(one).First()))
                .GroupBy(one =>
                    (
                        Status: StatusOf(one.Barred, style.Day),
                        Why: told.Contains(one.Reason.Text) ? "" : style.Names.OfAny(one.Barred.Action, one.Reason.Said)
                    )
                )
                .Select(group => ItemOf(style, [.. group.Select(one => one.Barred)], group.Key.Status, group.Key.Why)),
        ];
        return items.Length == 0
            ? []
            : [Heading.Section("You have it, and may not use it here now"), new ItemList([.. items]).At(2)];
    }

    /// <summary>What the grower has the label of and may use, where the work above does not tell it already.</summary>
    public static IEnumerable<Block> Usable(PageStyle style, AreaAdvice area, PageDetail detail)
    {
        HashSet<string> told = [.. WorkSection.Told(style, detail).Select(line => line.Best.Action)];
        Item[] items =
        [
            .. area
                .Clear.Where(one => !told.Contains(one.Action) && style.Names.Treatment(one.Action)?.Label is not null)
                .Select(one => new Item(
                    Item.Dash,
                    Line.Of($"{new Named(style.Names.Action(one.Action))}{StatusWords.UnlessInWords(one)}") with
                    {
                        Action = one.Action,
                    }
                )
                {
                    Below = [.. WorkItem.LabelOf(style, one).Select(block => block.At(4))],
                }),
        ];
        return items.Length == 0
            ? []
            : [Heading.Section("You have it, and may use it"), new ItemList([.. items]).At(2)];
    }

    // Another way is told as what may be done.
    private static string StatusOf(BarredAction barred, DateOnly day) =>
        barred.Status == ActionStatus.NotThisWay
            ? $"not this way, only {StatusWords.EndOf(barred, day)}"
            : StatusWords.Of(barred, day);

    private static Item ItemOf(PageStyle style, BarredAction[] barred, string status, string why)
    {
        string names = string.Join("; ", barred.Select(one => style.Names.Action(one.Action)));
        return new Item(
            Item.Dash,
            Line.FromString($"{names}: {status}.{(why.Length > 0 ? " " + why : "")}") with
            {
                Action = barred[0].Action,
                Tone = Tone.Warning,
            }
        );
    }
}
