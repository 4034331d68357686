using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Advise.InHand;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>
/// The answers on what the grower has, asks about or used last, above all that is said of other chemicals. Never cut;
/// what is said of several is said once, and what the work above tells already is only pointed at.
/// </summary>
internal static class HeldSection
{
    /// <summary>What stands above the answers.</summary>
    public const string Title = "Chemicals you have, or ask about";

    private const int MostAtLength = 4;
    private const int Below = 4;

    /// <summary>The section of a page.</summary>
    public static IEnumerable<Block> Of(PageStyle style, PageDetail detail)
    {
        ImmutableArray<WorkLine> shown = WorkSection.Shown(style, detail);
        HashSet<string> told = [.. WorkSection.Told(style, detail).Select(line => line.Best.Action)];
        // What to mind with those that may go on stands below, with that of all others.
        HeldAnswer[][] groups = [.. Alike([.. style.Held.Select(one => one with { Mind = "" })])];
        HashSet<string> whys = new(StringComparer.Ordinal);
        Item[] items =
        [
            .. groups.Take(MostAtLength).Select(group => ItemOf(style, shown, told, whys, group)),
            .. Rest([.. groups.Skip(MostAtLength).SelectMany(group => group)]),
        ];
        return items.Length == 0 ? [] : [Heading.Section(Title), new ItemList([.. items]).At(2)];
    }

    /// <summary>The section of the full report: each at length; its cautions stand with it among the work.</summary>
    public static IEnumerable<Block> InFull(Names names, AreaAdvice area, DateOnly day)
    {
        HashSet<string> whys = new(StringComparer.Ordinal);
        Item[] items =
        [
            .. Alike([.. HeldAnswers.Of(names, area, day).Select(one => one with { Mind = "" })])
                .Select(alike => ItemOf(whys, alike)),
        ];
        return items.Length == 0 ? [] : [Heading.Section(Title), new ItemList([.. items]).At(2)];
    }

    /// <summary>The answer on several alike, with their names; a reason that was told is not told again.</summary>
    public static Line LineOf(HashSet<string> whys, HeldAnswer[] alike)
    {
        HeldAnswer first = alike[0];
        string says = first.Judgement is null || whys.Add(first.Why) ? first.Says : $"{first.Head}: the same reason.";
        string mind = first.Mind.Length == 0 ? "" : $" Mind: {first.Mind}";
        return Line.FromString($"{string.Join("; ", NamesOf(alike))}: {says}{mind}") with
        {
            Action = first.Action,
            Tone = first.IsUsable ? Tone.Normal : Tone.Warning,
        };
    }

    /// <summary>
    /// The answers, those of which the same is said together: what was asked before what was used or is only in the
    /// book, in each what may go on first.
    /// </summary>
    public static IEnumerable<HeldAnswer[]> Alike(ImmutableArray<HeldAnswer> answers) =>
        answers
            .GroupBy(one => one.IsUsable ? one.Name : $"{one.Verdict}: {one.Says}", StringComparer.Ordinal)
            .Select(group => group.ToArray())
            .OrderBy(group => group[0].From)
            .ThenBy(group => group[0].Verdict);

    private static Item ItemOf(HashSet<string> whys, HeldAnswer[] alike) => new(Item.Dash, LineOf(whys, alike));

    private static Item ItemOf(
        PageStyle style,
        ImmutableArray<WorkLine> shown,
        HashSet<string> told,
        HashSet<string> whys,
        HeldAnswer[] alike
    )
    {
        HeldAnswer first = alike[0];
        if (!first.IsUsable)
            return ItemOf(whys, alike);
        if (told.Contains(first.Action!))
        {
            int at = shown.TakeWhile(line => line.Best.Action != first.Action).Count() + 1;
            return new Item(
                Item.Dash,
                Line.FromString(string.Create(CultureInfo.InvariantCulture, $"{first.Name}: yes, see {at} above.")) with
                {
                    Action = first.Action,
                }
            );
        }

        ClearAction? clear = style.Clear.FirstOrDefault(one => one.Action == first.Action);
        return ItemOf(whys, alike) with
        {
            Below = clear is null ? [] : [.. WorkItem.LabelOf(style, clear).Select(block => block.At(Below))],
        };
    }

    // Whoever has a full store still reads of each whether it may be used.
    private static IEnumerable<Item> Rest(HeldAnswer[] rest)
    {
        if (rest.Length == 0)
            yield break;
        IEnumerable<string> words = rest.GroupBy(one => one.Verdict)
            .OrderByDescending(group => group.Key is HeldVerdict.No or HeldVerdict.Withdrawn)
            .ThenBy(group => group.Key)
            .Select(group => $"{Brief(group.Key)}: {string.Join(", ", NamesOf(group))}");
        yield return new Item(
            Item.Dash,
            Line.FromString($"And {string.Join("; ", words)}. Why: '--full'.") with
            {
                Tone = Tone.Warning,
            }
        );
    }

    // Two words for one chemical are one name.
    private static IEnumerable<string> NamesOf(IEnumerable<HeldAnswer> answers) =>
        answers.Select(one => one.Name).Distinct(StringComparer.Ordinal);

    private static string Brief(HeldVerdict verdict) =>
        verdict switch
        {
            HeldVerdict.Yes => "yes, but read its label first",
            HeldVerdict.YesUnless => "yes, unless an answer speaks against it",
            HeldVerdict.Waits => "not before more is told",
            HeldVerdict.NotYet => "not now",
            HeldVerdict.NotThisWay => "not this way",
            HeldVerdict.NotAdvised => "not advised",
            HeldVerdict.NotHeld => "not held here, ask",
            HeldVerdict.Withdrawn => "never, it was withdrawn",
            _ => "no",
        };
}
