using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Reports.Text;

/// <summary>What is going on in an area, what to mind there, where rules disagree and what none could judge.</summary>
internal static class FindingSection
{
    public static void Write(Page page, AreaAdvice area)
    {
        if (area.Findings.IsEmpty)
            return;
        page.Heading("What is going on here");
        foreach (Finding finding in area.Findings.OrderByDescending(finding => finding.IsCertain))
        {
            page.Write(2, "- ", $"{finding.Text} {Standing(finding)}");
            foreach (Reason reason in finding.Because.DistinctBy(reason => reason.Text))
                page.Write(6, $"{reason.Text}{Figures.Keys(reason.Sources)}");
        }
    }

    public static void WriteCautions(Page page, AreaAdvice area)
    {
        if (area.Cautions.IsEmpty)
            return;
        page.Heading("Mind here");
        foreach (AreaCaution caution in area.Cautions)
        {
            string lead = caution.IsCertain ? "" : $"May apply{Open(caution.Because.Needs)}: ";
            page.Write(2, "- ", $"{lead}{caution.Text}{Figures.Keys(caution.Because.Sources)}");
        }
    }

    public static void WriteConflicts(Page page, Names names, AreaAdvice area)
    {
        if (area.Conflicts.IsEmpty)
            return;
        page.Heading("Where rules disagree: you decide");
        foreach (Conflict conflict in area.Conflicts)
        {
            page.Write(2, "- ", names.Action(conflict.Action));
            WriteSide(page, "for: ", conflict.For);
            WriteSide(page, "against: ", conflict.Against);
        }
    }

    public static void WriteGaps(Page page, AreaAdvice area)
    {
        if (area.Gaps.IsEmpty)
            return;
        page.Heading("What no rule could judge");
        foreach (Gap gap in area.Gaps)
            page.Write(2, "- ", gap.Text);
    }

    private static void WriteSide(Page page, string mark, ImmutableArray<Reason> reasons)
    {
        foreach (Reason reason in reasons)
            page.Write(6, mark, $"{reason.Text} ({Figures.Strength(reason)}){Figures.Keys(reason.Sources)}");
    }

    private static string Standing(Finding finding) => finding.IsCertain
        ? $"- {Figures.FindingWord(finding.Certainty)}, {Figures.Share(finding.Certainty)}"
        : "- not sure" + Open([.. finding.Because.SelectMany(reason => reason.Needs).Distinct().Order()]);

    private static string Open(ImmutableArray<Need> needs) =>
        needs.IsEmpty ? "" : $" ({string.Join(" and ", needs.Select(need => need.Id))} not known)";
}
