using System.Collections.Immutable;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Documents;

/// <summary>A table on a page of characters: in columns where they fit, else each row as a sentence.</summary>
internal static class TextTable
{
    public static void Write(Page page, Table table, int left)
    {
        bool isDrawn = IsDrawn(table, page.Width - left);
        if (isDrawn)
            Headings(page, table, left);
        foreach (Row row in table.Rows)
        {
            (page.Tone, page.Action) = (row.Tone, row.Head.Action);
            if (table.HeadPlace == RowHeadPlace.Above)
                page.Write(left, row.Mark, row.Head.Text);
            if (isDrawn)
                page.Drawn(left + table.CellIndent, Drawn(table, row));
            else
                Sentence(page, table, row, left + table.SentenceIndent);
            (page.Tone, page.Action) = (Tone.Normal, null);
        }
    }

    /// <summary>Whether every cell has its column, with a blank before it, on a page that is wide enough.</summary>
    private static bool IsDrawn(Table table, int width)
    {
        int remark = table.Rows.Select(row => ColumnWidth.Of(row.Remark)).DefaultIfEmpty().Max();
        int needed = table.CellIndent + table.HeadWidth + table.Columns.Sum(column => column.Width) + (remark > 0 ? remark + 1 : 0);
        return width >= Math.Max(needed, table.LeastPage)
            && table.Rows.All(row => row.Cells.Zip(table.Columns).All(pair => ColumnWidth.Of(pair.First.Text) < pair.Second.Width))
            && table.Rows.All(row => table.HeadWidth == 0 || ColumnWidth.Of(row.Head.Text) < table.HeadWidth);
    }

    private static void Headings(Page page, Table table, int left)
    {
        int lines = table.Columns.Max(column => column.Brief.Length);
        for (int line = 0; line < lines; line++)
        {
            string cells = string.Concat(table.Columns.Select(column =>
                ColumnWidth.PadLeft(line < column.Brief.Length ? column.Brief[line] : "", column.Width)));
            page.Drawn(left + table.CellIndent, new string(' ', table.HeadWidth) + cells);
        }
    }

    private static string Drawn(Table table, Row row)
    {
        string head = table.HeadPlace == RowHeadPlace.Beside ? ColumnWidth.PadRight(row.Head.Text, table.HeadWidth) : "";
        string cells = string.Concat(
            row.Cells.Zip(table.Columns, (cell, column) => ColumnWidth.PadLeft(cell.Text, column.Width)));
        return row.Remark.Length > 0 ? $"{head}{cells} {row.Remark}" : head + cells;
    }

    private static void Sentence(Page page, Table table, Row row, int left)
    {
        ImmutableArray<string> cells =
        [
            .. row.Cells
                .Zip(table.Columns, (cell, column) => $"{column.Before}{cell.Text}{column.After}")
                .Skip(table.HeadPlace == RowHeadPlace.InSentence ? 1 : 0),
        ];
        string remark = row.Remark.Length > 0 ? $" ({row.Remark})" : "";
        string head = table.HeadPlace == RowHeadPlace.Above ? "" : $"{row.Head.Text}: ";
        page.Write(left, head, string.Join(table.Between, cells) + remark);
    }
}
