using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.Brief;

/// <summary>What is going on, what to mind and where rules disagree, without the reasons.</summary>
internal static class BriefFindings
{
    private const int MostPossible = 3;
    private const int MostNames = 4;

    public static IEnumerable<Block> Of(AreaAdvice area)
    {
        if (area.Findings.IsEmpty)
            yield break;
        yield return Heading.Section("What is going on here");
        yield return new ItemList([
            .. area
                .Findings.Where(finding => finding.IsCertain)
                .Select(finding => new Item(Item.Dash, $"{finding.Text} ({Figures.FindingWord(finding.Certainty)})")),
            .. area.Findings.Count(finding => !finding.IsCertain) is var open and > 0
                ?
                [
                    new Item(
                        Item.Open,
                        $"{open.ToString(CultureInfo.InvariantCulture)} more may be going on: not known yet."
                    ),
                ]
                : (Item[])[],
        ]).At(2);
    }

    public static IEnumerable<Block> Cautions(BriefStyle style, AreaAdvice area)
    {
        if (area.Cautions.IsEmpty)
            yield break;
        AreaCaution[] possible = [.. area.Cautions.Where(caution => !caution.IsCertain)];
        int shown = possible.Length <= MostPossible + 1 ? possible.Length : MostPossible;
        yield return Heading.Section("Mind here");
        yield return new ItemList([
            .. area
                .Cautions.Where(caution => caution.IsCertain)
                .Select(caution => Warning(Item.Dash, TextOf(style, caution))),
            .. possible
                .Take(shown)
                .Select(caution =>
                    Warning(Item.Open, $"{TextOf(style, caution)} (may apply; ask: {AskedBy(caution)})")
                ),
            .. possible.Length - shown is var more and > 0
                ? [Warning(Item.Open, $"{more.ToString(CultureInfo.InvariantCulture)} more may apply: not known yet.")]
                : (Item[])[],
        ]).At(2);
    }

    /// <summary>
    /// Where rules disagree: the strongest argument against, and the actions that it stands against. Actions told in
    /// full carry theirs already.
    /// </summary>
    public static IEnumerable<Block> Conflicts(BriefStyle style, AreaAdvice area)
    {
        HashSet<string> inFull = [.. BriefActions.InFull(area).Select(action => action.Action)];
        Conflict[] conflicts = [.. area.Conflicts.Where(conflict => !inFull.Contains(conflict.Action))];
        if (conflicts.Length == 0)
            yield break;
        yield return Heading.Section("Where rules disagree: you decide");
        var groups = conflicts
            .Select(conflict => (conflict.Action, Against: Strongest(conflict)))
            .GroupBy(item => style.Names.OfAny(item.Action, item.Against.Said), StringComparer.Ordinal)
            .OrderByDescending(group => group.Count())
            .ThenBy(group => group.Key, StringComparer.Ordinal);
        yield return new ItemList([
            .. groups.Select(group => new Item(
                Item.Dash,
                $"against: {group.Key}{style.Keys(group.First().Against.Sources)}"
            )
            {
                Below =
                [
                    new Paragraph(
                        Listing.Some(style.Names.ActionsInOrder(group.Select(item => item.Action)), MostNames)
                    ).At(4),
                ],
            }),
        ]).At(2);
    }

    private static string TextOf(BriefStyle style, AreaCaution caution) =>
        Figures.Sentence(caution.Text) + style.Keys(caution.Because.Sources);

    private static string AskedBy(AreaCaution caution) =>
        string.Join(", ", caution.Because.Needs.Select(need => need.Id));

    private static Item Warning(string mark, string text) =>
        new(mark, Line.FromString(text) with { Tone = Tone.Warning });

    private static Reason Strongest(Conflict conflict) =>
        conflict
            .Against.OrderByDescending(reason => reason.Certainty)
            .ThenBy(reason => reason.Judgement, StringComparer.Ordinal)
            .First();
}
