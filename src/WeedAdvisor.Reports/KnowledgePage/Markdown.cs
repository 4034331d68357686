using System.Text;

namespace WeedAdvisor.Reports.KnowledgePage;

/// <summary>Markdown text as it grows: headings, paragraphs and tables.</summary>
internal sealed class Markdown
{
    private readonly StringBuilder _text = new();

    /// <summary>Everything written so far; each line ends with a line feed.</summary>
    public override string ToString() => _text.ToString();

    /// <summary>A heading.</summary>
    public void Heading(int level, string text) => Block($"{new string('#', level)} {text}");

    /// <summary>A paragraph.</summary>
    public void Paragraph(string text) => Block(text);

    /// <summary>A table; nothing but the given words when it has no rows.</summary>
    public void Table(string whenEmpty, string[] columns, IEnumerable<string[]> rows)
    {
        string[] lines = [.. rows.Select(Row)];
        if (lines.Length == 0)
            Block(whenEmpty);
        else
            Block(string.Join('\n', [Row(columns), Row([.. columns.Select(_ => "---")]), .. lines]));
    }

    private static string Row(string[] cells) => $"| {string.Join(" | ", cells.Select(Cell))} |";

    private static string Cell(string text) =>
        text.Replace("|", "\\|", StringComparison.Ordinal)
            .Replace("<", "&lt;", StringComparison.Ordinal)
            .ReplaceLineEndings(" ");

    private void Block(string text)
    {
        if (_text.Length > 0)
            _text.Append('\n');
        _text.Append(text).Append('\n');
    }
}
