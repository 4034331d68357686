using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Catalogue;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports;

/// <summary>Lists and records of the knowledge as text.</summary>
public static class CatalogueText
{
    private const int WidestId = 36;

    /// <summary>A list of a catalogue: id and name, one record after the other.</summary>
    public static string List(ImmutableArray<CatalogueEntry> entries, int width) =>
        DocumentText.Of(
            [
                new FieldList(
                    [.. entries.Select(entry => new FieldEntry(entry.Id, [entry.Name]))],
                    Math.Min(WidestId, width / 2) - 2
                ),
            ],
            width
        );

    /// <summary>Records in full.</summary>
    public static string Show(ImmutableArray<CatalogueEntry> entries, int width) =>
        DocumentText.Of(entries.SelectMany((entry, at) => Record(entry, isFirst: at == 0)), width);

    /// <summary>How much the knowledge holds, and what of it was checked too long ago.</summary>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="today">The day from which the age of a check is counted.</param>
    public static string Counts(KnowledgeBase knowledge, DateOnly today) =>
        DocumentText.Of(
            [
                new Paragraph($"Knowledge {knowledge.Stamp.Version}"),
                new Paragraph(knowledge.Stamp.Hash),
                new ItemList([
                    .. KnowledgeCatalogue.Kinds.Select(kind => new Item(
                        Column(KnowledgeCatalogue.Of(knowledge, kind, today).Length),
                        kind
                    )),
                    new Item(Column(knowledge.WorkedVisits.Length), "worked visits"),
                ]).At(2),
                .. Stale(knowledge, today),
            ],
            Page.Narrowest * 2
        );

    private static IEnumerable<Block> Stale(KnowledgeBase knowledge, DateOnly today)
    {
        CheckedRecord[] all = [.. Checks.All(knowledge)];
        CheckedRecord[] stale = [.. all.Where(one => Checks.IsStale(one.Checked, today))];
        if (stale.Length > 0)
            yield return new Paragraph(
                $"{Figures.Count(stale.Length, "record was", "records were")} checked over a year ago:"
            );
        foreach (var day in stale.GroupBy(one => one.Checked))
            yield return new Keyed(
                $"checked {Checks.Told(day.Key, today)}: ",
                string.Join(", ", day.Select(one => one.Id))
            );
        CheckedRecord[] never = [.. all.Where(one => one.Checked is null)];
        if (never.Length > 0)
            yield return new Paragraph(
                $"{Figures.Count(never.Length, "record was", "records were")} never held against a source:"
            );
        foreach (var kind in never.GroupBy(one => one.Kind))
            yield return new Keyed($"{kind.Key}: ", string.Join(", ", kind.Select(one => one.Id)));
    }

    private static IEnumerable<Block> Record(CatalogueEntry entry, bool isFirst) =>
        [
            .. isFirst ? [] : (Block[])[new Blank()],
            new Paragraph($"{entry.Id} ({entry.Kind})"),
            new Paragraph(entry.Name),
            .. Fields(entry.Read()),
        ];

    private static IEnumerable<Block> Fields(ImmutableArray<Field> fields)
    {
        string last = "";
        foreach (Field field in fields)
        {
            string mark = $"{field.Label}: ";
            yield return new Keyed(field.Label == last ? new string(' ', mark.Length) : mark, field.Value).At(2);
            last = field.Label;
        }
    }

    private static string Column(int count) => count.ToString(CultureInfo.InvariantCulture).PadLeft(5) + " ";
}
