namespace WeedAdvisor.Knowledge.Yaml;

/// <summary>Lists and maps in brackets, which may go over several lines.</summary>
internal sealed partial class PlainReader
{
    private Node? InBrackets(int column)
    {
        if (++_depth > DeepestNesting)
            return null;
        Node? node = Now == '[' ? ListInBrackets(column) : MapInBrackets(column);
        _depth--;
        return node;
    }

    private SequenceNode? ListInBrackets(int column)
    {
        (int line, int at, int first) = (_line, Column + 1, _items.Count);
        do
        {
            _at++;
            if (!SkipWithin(column))
                return null;
            if (Now == ']' && _items.Count == first)
                break;
            if ((IsAtKey() ? Pair(column) : WithinBrackets(column)) is not { } item || !SkipWithin(column))
                return null;
            _items.Add(item);
        } while (Now == ',');

        if (Now != ']')
            return null;
        _at++;
        return new SequenceNode(Taken(_items, first), line, at) { IsFlow = true };
    }

    // A map of one key may stand in a list without brackets of its own. The parser names no place for it, so that what
    // is wrong with it is told at the start of the file; so it is here.
    private MappingNode? Pair(int column)
    {
        ScalarNode key = Key();
        SkipSpaces();
        return WithinBrackets(column) is { } value
            ? new MappingNode([new Entry(key, value)], line: 1, column: 1) { IsFlow = true }
            : null;
    }

    private MappingNode? MapInBrackets(int column)
    {
        (int line, int at, int first) = (_line, Column + 1, _entries.Count);
        HashSet<string>? many = null;
        do
        {
            _at++;
            if (!SkipWithin(column))
                return null;
            if (Now == '}' && _entries.Count == first)
                break;
            if (!IsAtKey())
                return null;
            ScalarNode key = Key();
            if (!SkipWithin(column) || WithinBrackets(column) is not { } value || !SkipWithin(column))
                return null;
            if (!IsNew(key.Text, first, ref many))
                return null;
            _entries.Add(new Entry(key, value));
        } while (Now == ',');

        if (Now != '}')
            return null;
        _at++;
        return new MappingNode(Taken(_entries, first), line, at) { IsFlow = true };
    }

    private Node? WithinBrackets(int column) =>
        Now switch
        {
            '[' or '{' => InBrackets(column),
            '\'' or '"' => Quoted(),
            _ => PlainWithinBrackets(),
        };

    private ScalarNode? PlainWithinBrackets()
    {
        ReadOnlySpan<char> rest = _text.AsSpan(_at);
        int end = 0;
        while (end < rest.Length && !MayEndWord(rest[end]))
            end++;
        if (end == rest.Length || rest[end] is not (',' or ']' or '}') || !BeginsPlain(rest[..end]))
            return null;
        return Scalar(rest[..end].TrimEnd(' '), isPlain: true, end);
    }

    // A colon or a bracket within a word has rules of its own in brackets, and so has a word that goes on below.
    private static bool MayEndWord(char c) => c is ',' or '[' or ']' or '{' or '}' or ':' or '#' or '\n';

    // Spaces and ends of lines. What stands on a further line must be set in deeper than the value's key or dash.
    private bool SkipWithin(int column)
    {
        SkipSpaces();
        while (!IsAtEnd && Now == '\n')
        {
            StartLine(_at + 1);
            SkipSpaces();
            if (Now != '\n' && Column <= column)
                return false;
        }

        return !IsAtEnd;
    }
}
