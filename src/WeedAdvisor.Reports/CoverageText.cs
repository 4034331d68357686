using System.Collections.Immutable;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;
using WeedAdvisor.Reports.Worked;

namespace WeedAdvisor.Reports;

/// <summary>The coverage of the worked visits as text.</summary>
public static class CoverageText
{
    /// <summary>The coverage in one line.</summary>
    public static string Line(Coverage coverage, CoverageGaps gaps) =>
        $"{Figures.Count(coverage.Visits, "visit shows", "visits show")} "
        + $"{coverage.Judgements.Count(rule => rule.Fires > 0)} of {coverage.Judgements.Length} rules holding, "
        + $"{coverage.Practices.Count(action => !action.ClearIn.IsEmpty)} of {coverage.Practices.Length} practices and "
        + $"{coverage.Treatments.Count(action => !action.ClearIn.IsEmpty)} of {coverage.Treatments.Length} chemicals "
        + $"clear; {Figures.Count(gaps.Open.Length, "gap", "gaps")}";

    /// <summary>What is not covered, what need not be, and the line.</summary>
    public static string Full(Coverage coverage, CoverageGaps gaps, int width) =>
        DocumentText.Of(
            [
                .. Groups(gaps.Open, GapTitle),
                .. Excused(gaps),
                .. Groups(gaps.Idle, lacks => $"excused from '{lacks}', yet shown: take it out of coverage.yaml"),
                new Blank(),
                new Paragraph(Line(coverage, gaps)),
            ],
            width
        );

    /// <summary>What a gap means, as a heading.</summary>
    public static string GapTitle(string lacks) =>
        lacks switch
        {
            "fires" => "rules that hold in no visit",
            "held-back" => "rules that no visit holds back",
            "expected" => "rules that hold, but no visit says that they must",
            "clear" => "actions that are clear in no visit",
            "expected-clear" => "actions that are clear, but no visit says that they must be",
            "barred" => "chemicals that are barred in no visit",
            _ => "chemicals that are barred, but no visit says that they must be",
        };

    private static IEnumerable<Block> Excused(CoverageGaps gaps)
    {
        if (gaps.Excused.IsEmpty)
            yield break;
        yield return Heading.Section("not shown, with a reason");
        foreach (IGrouping<string?, CoverageGap> group in gaps.Excused.GroupBy(gap => gap.Excuse))
        {
            yield return new Paragraph(Figures.Sentence(group.Key!));
            foreach (CoverageGap gap in group)
                yield return new Keyed($"{gap.Lacks}: ", gap.Subject).At(2);
        }
    }

    private static IEnumerable<Block> Groups(ImmutableArray<CoverageGap> gaps, Func<string, string> title) =>
        gaps.GroupBy(gap => gap.Lacks)
            .SelectMany(group =>
                group.Select(gap => new Paragraph(gap.Subject).At(2)).Prepend(Heading.Section(title(group.Key)))
            );
}
