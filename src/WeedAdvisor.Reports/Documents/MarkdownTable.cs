using System.Text;

namespace WeedAdvisor.Reports.Documents;

/// <summary>A table in Markdown, between pipes.</summary>
internal static class MarkdownTable
{
    public static void Write(StringBuilder text, Table table, string left)
    {
        bool hasHeads = table.HeadPlace != RowHeadPlace.InSentence;
        bool hasRemarks = table.Rows.Any(row => row.Remark.Length > 0);
        IEnumerable<string> names =
        [
            .. hasHeads ? [table.RowHead ?? ""] : (string[])[],
            .. table.Columns.Select(column => column.Name),
            .. hasRemarks ? [""] : (string[])[],
        ];
        IEnumerable<string> rules =
        [
            .. hasHeads ? ["---"] : (string[])[],
            .. table.Columns.Select(column => column.IsText ? "---" : "--:"),
            .. hasRemarks ? ["---"] : (string[])[],
        ];
        if (table.Caption is { } caption)
            text.Append($"{left}{MarkdownLetters.Of(caption)}\n\n");
        Line(text, left, names.Select(MarkdownLetters.Of));
        Line(text, left, rules);
        foreach (Row row in table.Rows)
        {
            Line(
                text,
                left,
                [
                    .. hasHeads
                        ? [$"{MarkdownLetters.Of(row.Mark)} {MarkdownLetters.Of(row.Head)}".Trim()]
                        : (string[])[],
                    .. row.Cells.Select(MarkdownLetters.Of),
                    .. hasRemarks ? [MarkdownLetters.Of(row.Remark)] : (string[])[],
                ]
            );
        }

        text.Append('\n');
    }

    private static void Line(StringBuilder text, string left, IEnumerable<string> cells) =>
        text.Append($"{left}| {string.Join(" | ", cells)} |\n");
}
