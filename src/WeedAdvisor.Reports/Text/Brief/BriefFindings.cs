using System.Globalization;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Text.Brief;

/// <summary>What is going on, what to mind and where rules disagree, without the reasons.</summary>
internal static class BriefFindings
{
    private const int MostPossible = 3;
    private const int MostNames = 4;

    public static void Write(Page page, AreaAdvice area)
    {
        if (area.Findings.IsEmpty)
            return;
        page.Heading("What is going on here");
        foreach (Finding finding in area.Findings.Where(finding => finding.IsCertain))
            page.Write(2, "- ", $"{finding.Text} ({Figures.FindingWord(finding.Certainty)})");
        if (area.Findings.Count(finding => !finding.IsCertain) is var open and > 0)
            page.Write(2, "? ", $"{open.ToString(CultureInfo.InvariantCulture)} more may be going on: not known yet.");
    }

    public static void WriteCautions(Page page, BriefStyle style, AreaAdvice area)
    {
        if (area.Cautions.IsEmpty)
            return;
        page.Heading("Mind here");
        foreach (AreaCaution caution in area.Cautions.Where(caution => caution.IsCertain))
            page.Write(2, "- ", Figures.Sentence(caution.Text) + style.Keys(caution.Because.Sources));
        AreaCaution[] possible = [.. area.Cautions.Where(caution => !caution.IsCertain)];
        int shown = possible.Length <= MostPossible + 1 ? possible.Length : MostPossible;
        foreach (AreaCaution caution in possible.Take(shown))
        {
            string ask = string.Join(", ", caution.Because.Needs.Select(need => need.Id));
            string text = Figures.Sentence(caution.Text) + style.Keys(caution.Because.Sources);
            page.Write(2, "? ", $"{text} (may apply; ask: {ask})");
        }

        if (possible.Length - shown is var more and > 0)
            page.Write(2, "? ", $"{more.ToString(CultureInfo.InvariantCulture)} more may apply: not known yet.");
    }

    /// <summary>
    /// Where rules disagree: the strongest argument against, and the actions that it stands against. Actions told in full
    /// carry theirs already.
    /// </summary>
    public static void WriteConflicts(Page page, BriefStyle style, AreaAdvice area)
    {
        HashSet<string> inFull = [.. BriefActions.InFull(area).Select(action => action.Action)];
        Conflict[] conflicts = [.. area.Conflicts.Where(conflict => !inFull.Contains(conflict.Action))];
        if (conflicts.Length == 0)
            return;
        page.Heading("Where rules disagree: you decide");
        var groups = conflicts
            .Select(conflict => (conflict.Action, Against: Strongest(conflict)))
            .GroupBy(item => style.Names.WithoutName(item.Action, item.Against.Text), StringComparer.Ordinal)
            .OrderByDescending(group => group.Count())
            .ThenBy(group => group.Key, StringComparer.Ordinal);
        foreach (var group in groups)
        {
            page.Write(2, "- ", $"against: {group.Key}{style.Keys(group.First().Against.Sources)}");
            page.Write(6, Listing.Some(style.Names.ActionsInOrder(group.Select(item => item.Action)), MostNames));
        }
    }

    private static Reason Strongest(Conflict conflict) => conflict.Against
        .OrderByDescending(reason => reason.Certainty)
        .ThenBy(reason => reason.Judgement, StringComparer.Ordinal)
        .First();
}
