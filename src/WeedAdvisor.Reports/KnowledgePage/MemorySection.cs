using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.KnowledgePage;

/// <summary>What was written from memory and waits to be confirmed.</summary>
internal static class MemorySection
{
    public static void Write(Markdown page, KnowledgeBase knowledge)
    {
        page.Heading(2, "From memory, not confirmed");
        page.Paragraph("Fields whose value no source at hand confirms. The advice says so wherever it rests on one.");
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

    private static string InWords(ImmutableArray<string> fields) => string.Join(", ", fields.Select(Names.Field));
}
