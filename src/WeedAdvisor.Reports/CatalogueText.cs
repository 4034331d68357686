using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Catalogue;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports;

/// <summary>Lists and records of the knowledge as text.</summary>
public static class CatalogueText
{
    private const int WidestId = 36;

    /// <summary>A list of a catalogue: id and name, one record after the other.</summary>
    public static string List(ImmutableArray<CatalogueEntry> entries, int width)
    {
        var page = new Page(width);
        int longest = entries.Select(entry => entry.Id.Length).DefaultIfEmpty(0).Max();
        int column = Math.Min(Math.Min(WidestId, width / 2), longest + 2);
        foreach (CatalogueEntry entry in entries)
        {
            if (entry.Id.Length + 2 <= column)
            {
                page.Write(0, entry.Id.PadRight(column), entry.Name);
            }
            else
            {
                page.Write(0, entry.Id);
                page.Write(column, entry.Name);
            }
        }

        return page.ToString();
    }

    /// <summary>Records in full.</summary>
    public static string Show(ImmutableArray<CatalogueEntry> entries, int width)
    {
        var page = new Page(width);
        foreach (CatalogueEntry entry in entries)
        {
            if (entry != entries[0])
                page.Gap();
            page.Write(0, $"{entry.Id} ({entry.Kind})");
            page.Write(0, entry.Name);
            WriteFields(page, entry.Read());
        }

        return page.ToString();
    }

    /// <summary>How much the knowledge holds.</summary>
    public static string Counts(KnowledgeBase knowledge)
    {
        var page = new Page(Page.Narrowest * 2);
        page.Write(0, $"Knowledge {knowledge.Stamp.Version}");
        page.Write(0, knowledge.Stamp.Hash);
        foreach (string kind in KnowledgeCatalogue.Kinds)
            page.Write(2, Column(KnowledgeCatalogue.Of(knowledge, kind).Length), kind);
        page.Write(2, Column(knowledge.WorkedVisits.Length), "worked visits");
        return page.ToString();
    }

    private static void WriteFields(Page page, ImmutableArray<Field> fields)
    {
        string last = "";
        foreach (Field field in fields)
        {
            string mark = $"{field.Label}: ";
            page.Write(2, field.Label == last ? new string(' ', mark.Length) : mark, field.Value);
            last = field.Label;
        }
    }

    private static string Column(int count) => count.ToString(CultureInfo.InvariantCulture).PadLeft(5) + " ";
}
