using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Reports.Text;

/// <summary>What is going on in an area, what to mind there, where rules disagree and what none could judge.</summary>
internal static class FindingSection
{
    public static void Write(Page page, AreaAdvice area)
    {
        ImmutableArray<Finding> sure = [.. area.Findings.Where(finding => finding.IsCertain)];
        ImmutableArray<Finding> open = [.. area.Findings.Where(finding => !finding.IsCertain)];
        if (!sure.IsEmpty)
            page.Heading("What is going on here");
        foreach (Finding finding in sure)
        {
            string strength = $"({Figures.FindingWord(finding.Certainty)}, {Figures.Share(finding.Certainty)})";
            page.Write(2, "- ", $"{finding.Text} {strength}");
            foreach (Reason reason in finding.Because.DistinctBy(reason => reason.Text))
                page.Write(6, $"{Figures.Sentence(reason.Text)}{Figures.Keys(reason.Sources)}");
        }

        if (!open.IsEmpty)
            page.Heading("What may be going on: not known yet");
        foreach (Finding finding in open)
            page.Write(2, "? ", $"{finding.Text} (ask: {Ids(NeedsOf(finding))})");
    }

    public static void WriteCautions(Page page, AreaAdvice area)
    {
        if (area.Cautions.IsEmpty)
            return;
        page.Heading("Mind here");
        foreach (AreaCaution caution in area.Cautions)
        {
            string mark = caution.IsCertain ? "- " : "? ";
            string open = caution.IsCertain ? "" : $" (may apply; ask: {Ids(caution.Because.Needs)})";
            string text = Figures.Sentence(caution.Text);
            page.Write(2, mark, $"{text}{open}{Figures.Keys(caution.Because.Sources)}");
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
            WriteSide(page, names, conflict.Action, "for: ", conflict.For);
            WriteSide(page, names, conflict.Action, "against: ", conflict.Against);
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

    private static void WriteSide(
        Page page, Names names, string action, string mark, ImmutableArray<Reason> reasons)
    {
        foreach (Reason reason in reasons)
        {
            string text = names.UnderItsName(action, reason.Text);
            page.Write(6, mark, $"{text} ({Figures.Strength(reason)}){Figures.Keys(reason.Sources)}");
        }
    }

    private static ImmutableArray<Need> NeedsOf(Finding finding) =>
        [.. finding.Because.SelectMany(reason => reason.Needs).Distinct().Order()];

    private static string Ids(ImmutableArray<Need> needs) => string.Join(", ", needs.Select(need => need.Id));
}
