using System.Globalization;
using System.Text;
using WeedAdvisor.Reports.Documents;

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

    private const int NarrowestColumn = 16,
        NarrowestPane = 8;

    private readonly List<PageLine> _lines = [];

    // A pane beside another may have fewer columns than a page.
    private Page(int width, bool isPane)
        : this(Narrowest) => Width = isPane ? Math.Clamp(width, NarrowestPane, Widest) : width;

    /// <summary>Columns of the page.</summary>
    public int Width { get; } =
        width is >= Narrowest and <= Widest
            ? width
            : throw new ArgumentOutOfRangeException(
                nameof(width),
                width,
                $"a page has {Narrowest} to {Widest} columns"
            );

    /// <summary>A page on a part of a screen, as narrow as it may be.</summary>
    internal static Page Pane(int width) => new(width, isPane: true);

    /// <summary>Everything written so far; each line ends with a line feed.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        foreach (PageLine line in _lines)
            text.Append(line.Text).Append('\n');
        return text.ToString();
    }

    /// <summary>Everything written so far, line by line.</summary>
    internal IReadOnlyList<PageLine> Lines => _lines;

    /// <summary>How what is written next is meant.</summary>
    internal Tone Tone { get; set; }

    /// <summary>The action that what is written next is about; null for none.</summary>
    internal string? Action { get; set; }

    /// <summary>An empty line.</summary>
    public void Gap() => _lines.Add(new PageLine("", Tone.Normal, null));

    /// <summary>A line across the page.</summary>
    public void Rule(char mark) => _lines.Add(new PageLine(new string(mark, Width), Tone.Normal, null));

    /// <summary>
    /// Wrapped text: the first line starts with the mark, the others stand below what follows it. The mark is not
    /// cleaned.
    /// </summary>
    /// <param name="indent">Columns left free before the mark.</param>
    /// <param name="mark">A mark such as <c>- </c>, or nothing.</param>
    /// <param name="text">The text.</param>
    /// <param name="hang">Columns by which the lines after the first stand in further.</param>
    public void Write(int indent, string mark, string text, int hang = 0)
    {
        int widest = Width - Math.Min(NarrowestColumn, Width / 2);
        int start = Math.Min(indent, widest / 2);
        if (start + ColumnWidth.Of(mark) > widest)
        {
            // No room beside the mark: it stands above the text.
            Write(start, mark);
            Write(start + 2, text);
            return;
        }

        int left = start + ColumnWidth.Of(mark);
        int column = Width - left;
        string lead = new string(' ', start) + mark;
        foreach (string line in Wrapped(Clean(text), column, column - hang))
        {
            Add((lead + line).TrimEnd());
            lead = new string(' ', left + hang);
        }
    }

    /// <summary>Wrapped text.</summary>
    public void Write(int indent, string text) => Write(indent, "", text);

    /// <summary>
    /// A line of a picture or a table: its blanks are kept and it is never wrapped, only cut at the edge.
    /// </summary>
    /// <param name="indent">Columns left free before the line.</param>
    /// <param name="line">The line.</param>
    /// <param name="paint">Colours what is shown; null to leave it as it is.</param>
    public void Drawn(int indent, string line, Func<string, string>? paint = null)
    {
        string whole = new string(' ', indent) + Clean(line);
        int shown = ColumnWidth.Of(whole) <= Width ? whole.Length : ColumnWidth.Fitting(whole, Width);
        string kept = whole[..shown].TrimEnd();
        Add(paint is null ? kept : paint(kept));
    }

    /// <summary>A heading over a part of the page.</summary>
    public void Heading(string text)
    {
        Gap();
        Write(0, text.ToUpperInvariant());
    }

    private void Add(string text) => _lines.Add(new PageLine(text, Tone, Action));

    /// <summary>A text without what could drive a terminal.</summary>
    internal static string Clean(string text)
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

    /// <summary>
    /// A text in lines of so many columns, the first behind a mark, the others below what follows it.
    /// </summary>
    internal static IEnumerable<string> Wrapped(string mark, string text, int width)
    {
        int left = ColumnWidth.Of(mark);
        string lead = mark;
        int column = Math.Max(1, width - left);
        foreach (string line in Wrapped(Clean(text), column, column))
        {
            yield return lead + line;
            lead = new string(' ', left);
        }
    }

    private static IEnumerable<string> Wrapped(string text, int column, int rest)
    {
        var line = new StringBuilder(column);
        int taken = 0;
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            foreach (string piece in Pieces(word, rest))
            {
                int columns = ColumnWidth.Of(piece);
                if (taken > 0 && taken + 1 + columns > column)
                {
                    yield return line.ToString();
                    line.Clear();
                    taken = 0;
                    column = rest;
                }

                if (taken > 0)
                {
                    line.Append(' ');
                    taken++;
                }

                line.Append(piece);
                taken += columns;
            }
        }

        yield return line.ToString();
    }

    private static IEnumerable<string> Pieces(string word, int column)
    {
        while (ColumnWidth.Of(word) > column)
        {
            int fitting = ColumnWidth.Fitting(word, column);
            int cut = word.LastIndexOfAny(['-', '/', ',', '.'], fitting - 1) + 1;
            if (cut <= 1)
                cut = fitting;
            yield return word[..cut];
            word = word[cut..];
        }

        yield return word;
    }
}
