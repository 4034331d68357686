using System.Text;

namespace WeedAdvisor.Reports.Documents;

/// <summary>A table in HTML.</summary>
internal static class HtmlTable
{
    public static void Write(StringBuilder html, Table table)
    {
        bool hasHeads = table.HeadPlace != RowHeadPlace.InSentence;
        bool hasRemarks = table.Rows.Any(row => row.Remark.Length > 0);
        html.Append("<table>\n");
        if (table.Caption is { } caption)
            html.Append($"<caption>{HtmlLetters.Of(caption)}</caption>\n");
        if (table.Columns.Any(column => column.Name.Length > 0))
        {
            html.Append("<thead>\n<tr>");
            if (hasHeads)
                html.Append($"<th scope=\"col\">{HtmlLetters.Of(table.RowHead ?? "")}</th>");
            foreach (Column column in table.Columns)
                html.Append($"<th scope=\"col\"{TextClass(column)}>{HtmlLetters.Of(column.Name)}</th>");
            html.Append(hasRemarks ? "<th scope=\"col\"></th></tr>\n</thead>\n" : "</tr>\n</thead>\n");
        }

        html.Append("<tbody>\n");
        foreach (Row row in table.Rows)
        {
            html.Append(row.Tone == Tone.Strong ? "<tr class=\"strong\">" : "<tr>");
            if (hasHeads)
                html.Append($"<th scope=\"row\">{Mark(row)}{HtmlLetters.Of(row.Head)}</th>");
            foreach ((int at, Line cell) in row.Cells.Index())
            {
                // Where the row has no head of its own, its first cell says what it is about.
                bool isHead = !hasHeads && at == 0;
                html.Append(
                    isHead
                        ? $"<th scope=\"row\">{HtmlLetters.Of(cell)}</th>"
                        : $"<td{TextClass(table.Columns[at])}>{HtmlLetters.Of(cell)}</td>"
                );
            }

            html.Append(hasRemarks ? $"<td class=\"text\">{HtmlLetters.Of(row.Remark)}</td></tr>\n" : "</tr>\n");
        }

        html.Append("</tbody>\n</table>\n");
    }

    private static string TextClass(Column column) => column.IsText ? " class=\"text\"" : "";

    private static string Mark(Row row) => row.Mark.Trim().Length == 0 ? "" : HtmlLetters.Of(row.Mark.Trim()) + " ";
}
