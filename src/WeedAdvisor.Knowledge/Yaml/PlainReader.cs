namespace WeedAdvisor.Knowledge.Yaml;

/// <summary>
/// Reads the plain part of our subset, of which nearly all knowledge is made: maps and lists in lines, words and
/// numbers, quotes without escapes on one line, lists and maps in brackets, folded text of one paragraph. Whatever else
/// stands in a text, and whatever is wrong with it, makes it decline, and <see cref="TreeBuilder"/> reads the whole
/// file: it alone says what is wrong. The two agree on every text that this one reads (<c>PlainReaderTests</c>); it is
/// here because a general parser is half of a cold start.
/// </summary>
internal sealed partial class PlainReader
{
    // Far below what the builder refuses, and no record comes near it.
    private const int DeepestNesting = 16;

    private const int LongestKey = 100;

    // Below it, looking through the keys is quickest.
    private const int FewKeys = 24;

    private readonly string _text;
    private readonly List<Entry> _entries = [];
    private readonly List<Node> _items = [];
    private int _at;
    private int _line = 1;
    private int _lineStart;
    private int _depth;

    private PlainReader(string text) => _text = text;

    /// <summary>The root of the text, whose nodes know no extents; null when it declines.</summary>
    /// <param name="text">A text that <see cref="SourceText"/> accepts.</param>
    public static Node? Read(string text)
    {
        // Tabs and the rarer ends of lines have rules of their own.
        if (text.AsSpan().ContainsAny('\t', '\r') || text.AsSpan().ContainsAny('\u2028', '\u2029', '\uFEFF'))
            return null;
        var reader = new PlainReader(text);
        reader.SkipToContent();
        return reader.Block() is { } root && reader.IsAtEnd ? root : null;
    }

    private bool IsAtEnd => _at == _text.Length;

    private char Now => _at < _text.Length ? _text[_at] : '\n';

    private char Next => _at + 1 < _text.Length ? _text[_at + 1] : '\n';

    // From 0; in front of every other column at the end of the text.
    private int Column => IsAtEnd ? -1 : _at - _lineStart;

    private bool IsAtItem => Now == '-' && Next == ' ' && !IsAtEnd;

    private Node? Block() => IsAtItem ? ListInLines() : MapInLines();

    private SequenceNode? ListInLines()
    {
        if (++_depth > DeepestNesting)
            return null;
        int column = Column,
            line = _line,
            first = _items.Count;
        while (Column == column && IsAtItem)
        {
            _at++;
            SkipSpaces();
            if ((IsAtKey() ? MapInLines() : ValueOf(column)) is not { } item)
                return null;
            _items.Add(item);
        }

        _depth--;
        return Column > column ? null : new SequenceNode(Taken(_items, first), line, column + 1);
    }

    private MappingNode? MapInLines()
    {
        if (++_depth > DeepestNesting)
            return null;
        int column = Column,
            line = _line,
            first = _entries.Count;
        HashSet<string>? many = null;
        while (Column == column && IsAtKey())
        {
            ScalarNode key = Key();
            SkipSpaces();
            if ((Now == '\n' ? BelowKey(column) : ValueOf(column)) is not { } value)
                return null;
            if (!IsNew(key.Text, first, ref many))
                return null;
            _entries.Add(new Entry(key, value));
        }

        _depth--;
        // A map that ends on its own column ends on what is no key.
        return Column >= column || _entries.Count == first
            ? null
            : new MappingNode(Taken(_entries, first), line, column + 1);
    }

    private Node? BelowKey(int column)
    {
        SkipToContent();
        return Column > column || (Column == column && IsAtItem) ? Block() : null;
    }

    // A value that begins on the line of its key or dash, up to the content after it.
    private Node? ValueOf(int column)
    {
        Node? value = Now switch
        {
            '[' or '{' => InBrackets(column),
            '\'' or '"' => Quoted(),
            '>' => Folded(column),
            _ => PlainToEndOfLine(),
        };
        if (value is null)
            return null;
        SkipSpaces();
        if (Now != '\n')
            return null;
        SkipToContent();
        // Text that goes on in the next line is one text to the parser.
        return Column > column ? null : value;
    }

    private bool IsNew(string key, int first, ref HashSet<string>? many)
    {
        int count = _entries.Count - first;
        if (count >= FewKeys)
        {
            many ??= _entries.Skip(first).Select(entry => entry.Key.Text).ToHashSet(StringComparer.Ordinal);
            return many.Add(key);
        }

        for (int i = first; i < _entries.Count; i++)
        {
            if (_entries[i].Key.Text == key)
                return false;
        }

        return true;
    }

    // What one list or map gathered, which lies on top of what those around it have gathered so far.
    private static T[] Taken<T>(List<T> stack, int first)
    {
        var taken = new T[stack.Count - first];
        stack.CopyTo(first, taken, 0, taken.Length);
        stack.RemoveRange(first, taken.Length);
        return taken;
    }

    private void SkipSpaces()
    {
        while (_at < _text.Length && _text[_at] == ' ')
            _at++;
    }

    // To the first character of the next line that is neither blank nor a comment. At the start of the text, of that.
    private void SkipToContent()
    {
        while (true)
        {
            SkipSpaces();
            if (IsAtEnd)
                return;
            if (Now == '#')
                _at = EndOfLine();
            else if (Now != '\n')
                return;
            if (!IsAtEnd)
                StartLine(_at + 1);
        }
    }

    private void StartLine(int at)
    {
        _at = at;
        _lineStart = at;
        _line++;
    }

    private int EndOfLine()
    {
        int length = _text.AsSpan(_at).IndexOf('\n');
        return length < 0 ? _text.Length : _at + length;
    }
}
