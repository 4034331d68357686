using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Labels;

/// <summary>A value that a label gets, as YAML on one line.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Yaml">The value; null takes it out.</param>
public sealed record LabelEdit(string Key, string? Yaml);

/// <summary>
/// Writes into the text of a label book. Lines that an edit does not speak of stay as they are, comments and blank
/// lines among them.
/// </summary>
public static class LabelBookText
{
    /// <summary>The book with a new label at its end.</summary>
    /// <param name="book">The text so far; may be empty.</param>
    /// <param name="id">The label's id.</param>
    /// <param name="values">Its values, in the order in which they are to stand.</param>
    public static string Appended(string book, string id, IEnumerable<LabelEdit> values)
    {
        string end = EndOfLine(book);
        string[] lines =
        [
            $"- id: {id}",
            .. values.Where(value => value.Yaml is not null).Select(value => $"  {value.Key}: {value.Yaml}"),
        ];
        string before = book.Length == 0 || book.EndsWith('\n') ? book : book + end;
        return before + string.Concat(lines.Select(line => line + end));
    }

    /// <summary>The book with one of its labels changed.</summary>
    /// <param name="book">The text.</param>
    /// <param name="label">Where the label begins, as the reader of the book told.</param>
    /// <param name="edits">What changes. A value that it has not gets a line at its end.</param>
    public static string With(string book, Place label, IEnumerable<LabelEdit> edits)
    {
        string end = EndOfLine(book);
        List<string> lines = [.. book.Split('\n').Select(line => line.TrimEnd('\r'))];
        int first = label.Line - 1;
        string indent = new(' ', label.Column - 1);
        foreach (LabelEdit edit in edits)
        {
            (int from, int to) = Extent(lines, first, label.Column - 1, edit.Key);
            string? line = edit.Yaml is null ? null : $"{edit.Key}: {edit.Yaml}";
            if (from < 0 && line is not null)
                lines.Insert(EndOf(lines, first, label.Column - 1), indent + line);
            if (from < 0)
                continue;
            string dash = lines[from][..(label.Column - 1)];
            lines.RemoveRange(from, to - from);
            if (line is not null)
                lines.Insert(from, dash + line);
        }

        return string.Join(end, lines);
    }

    // The lines of one value: that of its key and the deeper ones after it.
    private static (int From, int To) Extent(List<string> lines, int first, int column, string key)
    {
        int stop = EndOf(lines, first, column);
        for (int at = first; at < stop; at++)
        {
            if (
                IsBare(lines[at])
                || lines[at].Length <= column
                || !lines[at][column..].StartsWith(key + ":", StringComparison.Ordinal)
            )
            {
                continue;
            }

            int to = at + 1;
            while (to < stop && !IsBare(lines[to]) && Depth(lines[to]) > column)
                to++;
            return (at, to);
        }

        return (-1, -1);
    }

    // Where a new value goes: behind the label's last one, before what stands between it and the next label.
    private static int EndOf(List<string> lines, int first, int column)
    {
        int end = first + 1;
        for (int at = first + 1; at < lines.Count && (IsBare(lines[at]) || Depth(lines[at]) >= column); at++)
            end = IsBare(lines[at]) ? end : at + 1;
        return end;
    }

    private static bool IsBare(string line) => line.TrimStart() is "" or ['#', ..];

    private static int Depth(string line) => line.Length - line.TrimStart().Length;

    private static string EndOfLine(string text) => text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
}
