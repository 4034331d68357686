using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Worked;

namespace WeedAdvisor.Reports.KnowledgePage;

/// <summary>What the worked visits show.</summary>
internal static class CoverageSection
{
    public static void Write(Markdown page, KnowledgeBase knowledge, Coverage coverage)
    {
        var gaps = CoverageGaps.Of(coverage, knowledge.NotShown);
        page.Heading(2, "Worked visits");
        page.Paragraph(
            $"{CoverageText.Line(coverage, gaps)}. A rule is *held back* in a visit when it does not hold for sure in "
                + "one of its areas. What a visit says must come out is *expected*."
        );
        Topics(page, knowledge, coverage);
        Treatments(page, coverage);
        page.Heading(3, "Practices");
        page.Table(
            "None.",
            ["practice", "clear in", "first in"],
            coverage.Practices.Select(one => new[] { one.Id, Count(one.ClearIn), First(one.ClearIn) })
        );
        page.Heading(3, "Not shown, and why");
        page.Table(
            "Everything is shown.",
            ["what", "lacks", "why"],
            gaps.Excused.Select(gap => new[] { gap.Subject, gap.Lacks, gap.Excuse ?? "" })
        );
        page.Heading(3, "Gaps");
        page.Table(
            "None.",
            ["what", "lacks"],
            gaps.Open.Concat(gaps.Idle).Select(gap => new[] { gap.Subject, gap.Lacks })
        );
    }

    private static void Topics(Markdown page, KnowledgeBase knowledge, Coverage coverage)
    {
        var byId = coverage.Judgements.ToDictionary(rule => rule.Id, StringComparer.Ordinal);
        page.Heading(3, "Rules by topic");
        page.Table(
            "None.",
            ["topic", "rules", "hold somewhere", "held back somewhere", "hold everywhere by nature", "expected"],
            knowledge
                .Judgements.GroupBy(rule => rule.Topic, rule => byId[rule.Id])
                .OrderBy(topic => topic.Key, StringComparer.Ordinal)
                .Select(topic =>
                    new[]
                    {
                        topic.Key,
                        KnowledgeDocument.Number(topic.Count()),
                        KnowledgeDocument.Number(topic.Count(rule => rule.Fires > 0)),
                        KnowledgeDocument.Number(topic.Count(rule => rule.HeldBack > 0)),
                        KnowledgeDocument.Number(topic.Count(rule => rule.IsAlways)),
                        KnowledgeDocument.Number(topic.Count(rule => rule.IsExpected)),
                    }
                )
        );
    }

    private static void Treatments(Markdown page, Coverage coverage)
    {
        page.Heading(3, "Chemicals");
        page.Table(
            "None.",
            ["chemical", "clear in", "first in", "barred in"],
            coverage.Treatments.Select(one =>
                new[] { one.Id, Count(one.ClearIn), First(one.ClearIn), Count(one.BarredIn) }
            )
        );
    }

    private static string Count(ImmutableArray<string> visits) => KnowledgeDocument.Number(visits.Length);

    private static string First(ImmutableArray<string> visits) => visits.FirstOrDefault("-");
}
