using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.KnowledgePage;

/// <summary>What was written from memory and waits to be confirmed.</summary>
internal static class MemorySection
{
    public static void Write(Markdown page, KnowledgeBase knowledge)
    {
        page.Heading(2, "From memory, not confirmed");
        page.Paragraph("Fields whose value no source at hand confirms. The advice says so wherever it rests on one.");
        Gated(page, knowledge);
        foreach (IGrouping<string, CitedRecord> kind in CitedRecord.All(knowledge).GroupBy(record => record.Kind))
        {
            CitedRecord[] marked = [.. kind.Where(record => !record.Memory.IsEmpty)];
            if (marked.Length == 0)
                continue;
            int fields = marked.Sum(record => record.Memory.Length);
            page.Heading(3, $"{Figures.Sentence(kind.Key)}: {fields} fields of {marked.Length} records");
            page.Table(
                "None.",
                ["record", "fields"],
                marked.Select(record => new[] { record.Id, InWords(record.Memory) })
            );
        }
    }

    private static void Gated(Markdown page, KnowledgeBase knowledge)
    {
        page.Heading(3, "Gates from memory, and what was looked through for them");
        page.Paragraph(
            "What decides whether a chemical may be used: restricted use, entry interval, food plants, organic "
                + "growing, registration, uses and amount of a year. The sources on the right do not say it for this "
                + "active and form."
        );
        page.Table(
            "None.",
            ["record", "from memory", "looked through"],
            knowledge
                .Treatments.Values.Concat<Record>(knowledge.ActiveLimits.Values)
                .Where(record => !record.From.Searched.IsEmpty)
                .Select(record =>
                    new[]
                    {
                        record.Id,
                        InWords([.. record.Memory.Where(Gates.All.Contains)]),
                        string.Join(", ", record.From.Searched),
                    }
                )
        );
    }

    private static string InWords(ImmutableArray<string> fields) => string.Join(", ", fields.Select(Names.Field));
}
