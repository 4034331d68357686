using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Reports.KnowledgePage;

/// <summary>The sources, with how many records cite each.</summary>
internal static class CitationSection
{
    public static void Write(Markdown page, KnowledgeBase knowledge)
    {
        ImmutableArray<CitedRecord> records = CitedRecord.All(knowledge);
        Dictionary<string, int> citing = records
            .SelectMany(record => record.Sources)
            .GroupBy(key => key, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.Count(), StringComparer.Ordinal);
        page.Heading(2, "Sources");
        int rules = records.Count(record => record.Kind == "judgements");
        int unsourced = records.Count(record => record.Kind == "judgements" && record.Sources is ["common-practice"]);
        page.Paragraph(
            $"{unsourced} of {rules} rules rest on common practice alone. How many records, rules among them, cite "
                + $"each "
                + "source:"
        );
        page.Table(
            "None.",
            ["key", "source", "records"],
            knowledge
                .Sources.Values.OrderByDescending(source => citing.GetValueOrDefault(source.Key))
                .ThenBy(source => source.Key, StringComparer.Ordinal)
                .Select(source =>
                    new[]
                    {
                        source.Key,
                        InShort(source),
                        KnowledgeDocument.Number(citing.GetValueOrDefault(source.Key)),
                    }
                )
        );
    }

    private static string InShort(Source source) =>
        string.Join(
            ", ",
            new[] { source.Authors, source.Title, source.Publisher, source.Year }.Where(part =>
                !string.IsNullOrEmpty(part)
            )
        );
}
