using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Documents;

/// <summary>A table on a page of characters: in columns where they fit, else each row as a sentence.</summary>
internal static class TextTable
{
    private const int LeastHead = 16,
        RemarkIndent = 2;

    public static void Write(Page page, Table table, int left)
    {
        int head = HeadColumns(table, page.Width - left);
        bool isDrawn = IsDrawn(table, page.Width - left, head);
        if (isDrawn)
            Headings(page, table, left, head);
        foreach (Row row in table.Rows)
        {
            (page.Tone, page.Action) = (row.Tone, row.Head.Action);
            if (table.HeadPlace == RowHeadPlace.Above)
                page.Write(left, row.Mark, row.Head.Text);
            if (isDrawn)
                Draw(page, table, row, left + table.CellIndent, head);
            else
                Sentence(page, table, row, left + table.SentenceIndent);
            (page.Tone, page.Action) = (Tone.Normal, null);
        }
    }

    // Heads that have no columns of their own take what the cells leave.
    private static int HeadColumns(Table table, int width)
    {
        if (table.HeadPlace != RowHeadPlace.Beside)
            return 0;
        int cells = table.CellIndent + table.Columns.Sum(column => column.Width) + RemarkColumns(table);
        return table.HeadWidth > 0 ? table.HeadWidth : Math.Max(LeastHead, width - cells);
    }

    /// <summary>Whether every cell has its column, with a blank beside it, on a page that is wide enough.</summary>
    private static bool IsDrawn(Table table, int width, int head)
    {
        int needed = table.CellIndent + head + table.Columns.Sum(column => column.Width);
        return width >= Math.Max(needed, table.LeastPage)
            && table.Rows.All(row => table.HeadWidth == 0 || ColumnWidth.Of(row.Mark + row.Head.Text) < head)
            && table.Rows.All(row =>
                row.Cells.Zip(table.Columns).All(pair => Longest(pair.First.Text, pair.Second) < pair.Second.Width)
            );
    }

    // A cell of words may go on below, a word may not.
    private static int Longest(string cell, Column column) =>
        column.IsText ? cell.Split(' ').Max(ColumnWidth.Of) : ColumnWidth.Of(cell);

    private static int RemarkColumns(Table table)
    {
        int widest = table.Rows.Select(row => ColumnWidth.Of(row.Remark)).DefaultIfEmpty().Max();
        return widest > 0 ? widest + table.RemarkGap : 0;
    }

    private static void Headings(Page page, Table table, int left, int head)
    {
        page.Tone = Tone.Strong;
        int lines = table.Columns.Max(column => column.Brief.Length);
        for (int line = 0; line < lines; line++)
        {
            string cells = string.Concat(
                table.Columns.Select(column => Placed(line < column.Brief.Length ? column.Brief[line] : "", column))
            );
            string heads = table.HeadPlace == RowHeadPlace.Beside && line == 0 ? table.RowHead ?? "" : "";
            WithRemark(
                page,
                table,
                left + table.CellIndent,
                Cut(heads, head) + cells,
                line == 0 ? table.RemarkHead : ""
            );
        }

        page.Tone = Tone.Normal;
    }

    private static void Draw(Page page, Table table, Row row, int left, int head)
    {
        string[] cells = [.. Lines(table, row)];
        if (table.HeadPlace != RowHeadPlace.Beside)
        {
            WithRemark(page, table, left, cells[0], row.Remark);
            foreach (string line in cells.Skip(1))
                page.Drawn(left, line);
            return;
        }

        // A long head goes on below, beside what goes on of the cells.
        string[] heads = [.. Page.Wrapped(row.Mark, row.Head.Text, head)];
        for (int i = 0; i < Math.Max(heads.Length, cells.Length); i++)
        {
            string line = ColumnWidth.PadRight(heads.ElementAtOrDefault(i) ?? "", head);
            WithRemark(page, table, left, line + cells.ElementAtOrDefault(i), i == 0 ? row.Remark : "");
        }
    }

    // The cells of a row side by side; as many lines as the longest cell of words takes.
    private static IEnumerable<string> Lines(Table table, Row row)
    {
        string[][] cells =
        [
            .. row.Cells.Zip(table.Columns, (cell, column) =>
                column.IsText ? [.. Page.Wrapped("", cell.Text, column.Width - 1)] : (string[])[cell.Text]
            ),
        ];
        int lines = cells.Select(cell => cell.Length).DefaultIfEmpty(1).Max();
        for (int i = 0; i < lines; i++)
            yield return string.Concat(
                cells.Zip(table.Columns, (cell, column) => Placed(cell.ElementAtOrDefault(i) ?? "", column))
            );
    }

    private static string Placed(string text, Column column) =>
        column.IsText ? ColumnWidth.PadRight(text, column.Width) : ColumnWidth.PadLeft(text, column.Width);

    // A remark that has no room behind the cells stands below them.
    private static void WithRemark(Page page, Table table, int left, string cells, string remark)
    {
        bool isBehind = left + ColumnWidth.Of(cells) + table.RemarkGap + ColumnWidth.Of(remark) <= page.Width;
        page.Drawn(left, isBehind && remark.Length > 0 ? cells + new string(' ', table.RemarkGap) + remark : cells);
        if (!isBehind && remark.Length > 0)
            page.Write(left + RemarkIndent, remark);
    }

    private static string Cut(string head, int columns) =>
        ColumnWidth.PadRight(head.Length > columns ? head[..columns] : head, columns);

    private static void Sentence(Page page, Table table, Row row, int left)
    {
        IEnumerable<string> cells = row
            .Cells.Zip(table.Columns, (cell, column) => $"{column.Before}{cell.Text}{column.After}")
            .Skip(table.HeadPlace == RowHeadPlace.InSentence ? 1 : 0);
        string remark = row.Remark.Length > 0 ? $" ({row.Remark})" : "";
        string text = string.Join(table.Between, cells) + remark;
        if (table.HeadPlace == RowHeadPlace.Above)
            page.Write(left, text);
        else
            page.Write(left, $"{row.Mark}{row.Head.Text}: ", text);
    }
}
