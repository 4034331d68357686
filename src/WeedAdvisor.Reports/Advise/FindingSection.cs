using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>What is going on in an area, what to mind there, where rules disagree and what none could judge.</summary>
internal static class FindingSection
{
    private const int Left = 2,
        Inner = 4;

    public static IEnumerable<Block> Of(AreaAdvice area)
    {
        ImmutableArray<AreaFinding> sure = [.. area.Findings.Where(finding => finding.IsCertain)];
        ImmutableArray<AreaFinding> open = [.. area.Findings.Where(finding => !finding.IsCertain)];
        if (!sure.IsEmpty)
        {
            yield return Heading.Section("What is going on here");
            yield return new ItemList([.. sure.Select(Sure)]).At(Left);
        }

        if (!open.IsEmpty)
        {
            yield return Heading.Section("What may be going on: not known yet");
            yield return new ItemList([
                .. open.Select(finding => new Item(Item.Open, $"{finding.Text} (ask: {Ids(NeedsOf(finding))})")),
            ]).At(Left);
        }
    }

    public static IEnumerable<Block> Cautions(AreaAdvice area)
    {
        if (area.Cautions.IsEmpty)
            yield break;
        yield return Heading.Section("Mind here");
        yield return new ItemList([.. area.Cautions.Select(CautionOf)]).At(Left);
    }

    public static IEnumerable<Block> Conflicts(Names names, AreaAdvice area)
    {
        if (area.Conflicts.IsEmpty)
            yield break;
        yield return Heading.Section("Where rules disagree: you decide");
        yield return new ItemList([
            .. area.Conflicts.Select(conflict => new Item(
                Item.Dash,
                Line.FromTextPart(new Named(names.Action(conflict.Action))) with
                {
                    Action = conflict.Action,
                }
            )
            {
                Below = [.. Side("for: ", conflict.For), .. Side("against: ", conflict.Against)],
            }),
        ]).At(Left);
    }

    public static IEnumerable<Block> Gaps(AreaAdvice area)
    {
        if (area.Gaps.IsEmpty)
            yield break;
        yield return Heading.Section("What no rule could judge");
        yield return ItemList.Dashes(area.Gaps.Select(gap => Line.FromString(gap.Text))).At(Left);
    }

    private static Item Sure(AreaFinding finding) =>
        new(Item.Dash, $"{finding.Text} ({Figures.FindingWord(finding.Certainty)}, {Figures.Share(finding.Certainty)})")
        {
            Below =
            [
                .. finding
                    .Because.DistinctBy(reason => reason.Text)
                    .Select(reason =>
                        new Paragraph($"{Figures.Sentence(reason.Text)}{Figures.Keys(reason.Sources)}").At(Inner)
                    ),
            ],
        };

    private static Item CautionOf(AreaCaution caution)
    {
        string open = caution.IsCertain ? "" : $" (may apply; ask: {Ids(caution.Because.Needs)})";
        string text = $"{Figures.Sentence(caution.Text)}{open}{Figures.Keys(caution.Because.Sources)}";
        return new Item(caution.IsCertain ? Item.Dash : Item.Open, Line.FromString(text) with { Tone = Tone.Warning });
    }

    private static IEnumerable<Block> Side(string mark, ImmutableArray<Reason> reasons) =>
        reasons.Select(reason =>
            new Keyed(
                mark,
                $"{Names.UnderItsName(reason.Said)} ({Figures.Strength(reason)}){Figures.Keys(reason.Sources)}"
            ).At(Inner)
        );

    private static ImmutableArray<Need> NeedsOf(AreaFinding finding) =>
        [.. finding.Because.SelectMany(reason => reason.Needs).Distinct().Order()];

    private static string Ids(ImmutableArray<Need> needs) => string.Join(", ", needs.Select(need => need.Id));
}
