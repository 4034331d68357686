using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.KnowledgePage;

/// <summary>How many values of each field rest on a source, on practice, on memory.</summary>
internal static class FieldSources
{
    private const string Practice = "common-practice";
    private const string Invented = "invented";

    public static void Write(Markdown page, KnowledgeBase knowledge)
    {
        page.Heading(2, "Where values come from");
        page.Paragraph(
            "Each value of a record names its source under `from`. A value that is partly from memory counts as from "
                + "memory."
        );
        Table(page, "Weeds", knowledge.Weeds.Values);
        Table(page, "Crops", knowledge.Crops.Values);
        Table(page, "Practices", knowledge.Practices.Values);
        Table(page, "Treatments", knowledge.Treatments.Values);
        Table(page, "Actives", knowledge.Ingredients.Values);
        Table(page, "Withdrawn actives", knowledge.Withdrawn.Values);
        Table(page, "Regions", knowledge.Regions.Values);
        Table(page, "Limits of actives", knowledge.ActiveLimits.Values);
        Table(page, "Resistance on record", knowledge.Resistance.Values);
        Table(page, "Usual values", knowledge.Usual.Records.Values);
        Table(page, "Prices", knowledge.Prices.Values);
        Table(page, "Weeding parameters", knowledge.Weeding.Values);
    }

    private static void Table(Markdown page, string title, IEnumerable<Record> records)
    {
        page.Heading(3, title);
        page.Table(
            "None.",
            ["field", "values", "published", "common practice", "invented", "from memory", "share from memory"],
            records
                .SelectMany(record => record.From.Own)
                .Where(value => !value.Sources.IsEmpty)
                .GroupBy(value => value.Field, StringComparer.Ordinal)
                .OrderBy(field => field.Key, StringComparer.Ordinal)
                .Select(field => Row(field.Key, [.. field]))
        );
    }

    private static string[] Row(string field, ImmutableArray<FieldSource> values)
    {
        int memory = values.Count(value => value.Sources.Contains(Origins.FromMemory));
        int practice = values.Count(value => value.Sources is [Practice]);
        int invented = values.Count(value => value.Sources is [Invented]);
        return
        [
            Names.Field(field),
            KnowledgeDocument.Number(values.Length),
            KnowledgeDocument.Number(values.Length - memory - practice - invented),
            KnowledgeDocument.Number(practice),
            KnowledgeDocument.Number(invented),
            KnowledgeDocument.Number(memory),
            string.Create(CultureInfo.InvariantCulture, $"{100.0 * memory / values.Length:0} %"),
        ];
    }
}
