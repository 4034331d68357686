using System.Globalization;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Tests.Documents;

/// <summary>What a document says, gathered without any writer.</summary>
internal static class Saying
{
    /// <summary>Every line of a document.</summary>
    public static IEnumerable<Line> Lines(Document document) =>
        document.Blocks.SelectMany(Lines).Prepend(document.Title);

    /// <summary>Every part of every line, as it is read.</summary>
    public static IEnumerable<string> Parts(Document document) =>
        Lines(document).SelectMany(line => line.Parts).Select(part => part.Text);

    /// <summary>A text without what media may change: blanks, capitals, and letters that no medium shows.</summary>
    public static string Bare(string text) =>
        string.Concat(
            text.Where(letter =>
                    !char.IsWhiteSpace(letter)
                    && !char.IsControl(letter)
                    && char.GetUnicodeCategory(letter) != UnicodeCategory.Format
                )
                .Select(char.ToUpperInvariant)
        );

    private static IEnumerable<Line> Lines(Block block) =>
        block switch
        {
            Heading heading => heading.Below.Prepend(heading.Text),
            Paragraph paragraph => [paragraph.Text],
            Hanging hanging => [hanging.Text],
            Verbatim verbatim => verbatim.Lines.Select(Line.FromString),
            Keyed keyed => [keyed.Label, keyed.Text],
            Citation citation => [citation.Key, citation.Text!],
            ItemList list => list.Items.SelectMany(item => item.Below.SelectMany(Lines).Prepend(item.Text)),
            FieldList fields => fields.Entries.SelectMany(entry => entry.Values.Prepend(entry.Label)),
            Table table => table.Rows.SelectMany(row =>
                row.Cells.Zip(table.Columns).SelectMany(Cell).Prepend(row.Head).Append(row.Remark)
            ),
            _ => [],
        };

    // Words of columns side by side stand between each other; each stays whole. What drives a terminal parts words.
    private static IEnumerable<Line> Cell((Line Cell, Column Column) pair) =>
        pair.Column.IsText
            ? string.Concat(pair.Cell.Text.Select(letter => char.IsControl(letter) ? ' ' : letter))
                .Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(Line.FromString)
            : [pair.Cell];
}
