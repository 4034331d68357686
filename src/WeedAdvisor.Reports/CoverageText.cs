using System.Collections.Immutable;
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
    public static string Full(Coverage coverage, CoverageGaps gaps, int width)
    {
        var page = new Page(width);
        WriteGroups(page, gaps.Open, GapTitle);
        if (!gaps.Excused.IsEmpty)
        {
            page.Heading("not shown, with a reason");
            foreach (IGrouping<string?, CoverageGap> group in gaps.Excused.GroupBy(gap => gap.Excuse))
            {
                page.Write(0, "", Figures.Sentence(group.Key!));
                foreach (CoverageGap gap in group)
                    page.Write(2, $"{gap.Lacks}: ", gap.Subject);
            }
        }

        WriteGroups(page, gaps.Idle, lacks => $"excused from '{lacks}', yet shown: take it out of coverage.yaml");
        page.Gap();
        page.Write(0, Line(coverage, gaps));
        return page.ToString();
    }

    /// <summary>What a gap means, as a heading.</summary>
    public static string GapTitle(string lacks) => lacks switch
    {
        "fires" => "rules that hold in no visit",
        "held-back" => "rules that no visit holds back",
        "expected" => "rules that hold, but no visit says that they must",
        "clear" => "actions that are clear in no visit",
        "expected-clear" => "actions that are clear, but no visit says that they must be",
        "barred" => "chemicals that are barred in no visit",
        _ => "chemicals that are barred, but no visit says that they must be",
    };

    private static void WriteGroups(Page page, ImmutableArray<CoverageGap> gaps, Func<string, string> title)
    {
        foreach (IGrouping<string, CoverageGap> group in gaps.GroupBy(gap => gap.Lacks))
        {
            page.Heading(title(group.Key));
            foreach (CoverageGap gap in group)
                page.Write(2, gap.Subject);
        }
    }
}
