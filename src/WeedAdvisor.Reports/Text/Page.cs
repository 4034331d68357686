using System.Globalization;
using System.Text;

namespace WeedAdvisor.Reports.Text;

/// <summary>
/// Lines of plain text that never grow wider than the page. Text is wrapped between words; only a word wider than the
/// page itself is cut. Control and formatting characters, which could drive a terminal, are left out.
/// </summary>
/// <param name="width">Columns of the page.</param>
public sealed class Page(int width)
{
    /// <summary>The narrowest page that is still readable.</summary>
    public const int Narrowest = 40;

    /// <summary>The widest page.</summary>
    public const int Widest = 240;

    private const int NarrowestColumn = 16;

    private readonly StringBuilder _text = new();

    /// <summary>Columns of the page.</summary>
    public int Width { get; } = width is >= Narrowest and <= Widest
        ? width
        : throw new ArgumentOutOfRangeException(nameof(width), width, $"a page has {Narrowest} to {Widest} columns");

    /// <summary>Everything written so far; each line ends with a line feed.</summary>
    public override string ToString() => _text.ToString();

    /// <summary>An empty line.</summary>
    public void Gap() => _text.Append('\n');

    /// <summary>A line across the page.</summary>
    public void Rule(char mark) => _text.Append(mark, Width).Append('\n');

    /// <summary>
    /// Wrapped text: the first line starts with the mark, the others stand below what follows it. The mark is not cleaned.
    /// </summary>
    /// <param name="indent">Columns left free before the mark.</param>
    /// <param name="mark">A mark such as <c>- </c>, or nothing.</param>
    /// <param name="text">The text.</param>
    public void Write(int indent, string mark, string text)
    {
        int widest = Width - NarrowestColumn;
        int start = Math.Min(indent, widest / 2);
        if (start + mark.Length > widest)
        {
            // No room beside the mark: it stands above the text.
            Write(start, mark);
            Write(start + 2, text);
            return;
        }

        int left = start + mark.Length;
        int column = Width - left;
        string lead = new string(' ', start) + mark;
        foreach (string line in Lines(Clean(text), column))
        {
            _text.Append((lead + line).TrimEnd()).Append('\n');
            lead = new string(' ', left);
        }
    }

    /// <summary>Wrapped text.</summary>
    public void Write(int indent, string text) => Write(indent, "", text);

    /// <summary>A line of a picture or a table: its blanks are kept and it is never wrapped, only cut at the edge.</summary>
    public void Drawn(int indent, string line)
    {
        string whole = new string(' ', indent) + Clean(line);
        _text.Append(whole.AsSpan(0, Math.Min(whole.Length, Width)).TrimEnd()).Append('\n');
    }

    /// <summary>A heading over a part of the page.</summary>
    public void Heading(string text)
    {
        Gap();
        Write(0, text.ToUpperInvariant());
    }

    private static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (char c in text)
        {
            if (char.IsControl(c))
                clean.Append(' ');
            else if (char.GetUnicodeCategory(c) is not UnicodeCategory.Format)
                clean.Append(c);
        }

        return clean.ToString();
    }

    private static IEnumerable<string> Lines(string text, int column)
    {
        var line = new StringBuilder(column);
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            foreach (string piece in Pieces(word, column))
            {
                if (line.Length > 0 && line.Length + 1 + piece.Length > column)
                {
                    yield return line.ToString();
                    line.Clear();
                }

                if (line.Length > 0)
                    line.Append(' ');
                line.Append(piece);
            }
        }

        yield return line.ToString();
    }

    private static IEnumerable<string> Pieces(string word, int column)
    {
        while (word.Length > column)
        {
            int cut = word.LastIndexOfAny(['-', '/', ',', '.'], column - 1) + 1;
            if (cut <= 1)
                cut = column;
            yield return word[..cut];
            word = word[cut..];
        }

        yield return word;
    }
}
