using System.Text;

namespace WeedAdvisor.Knowledge.Yaml;

/// <summary>Keys and texts.</summary>
internal sealed partial class PlainReader
{
    private readonly StringBuilder _paragraph = new();

    // A key is a word before a colon and a space: no quotes, so that nothing in it could mean anything else.
    private bool IsAtKey()
    {
        int end = _at;
        while (end < _text.Length && IsOfKey(_text[end]))
            end++;
        return end > _at
            && end - _at <= LongestKey
            && char.IsAsciiLetterOrDigit(_text[_at])
            && end < _text.Length
            && _text[end] == ':'
            && (end + 1 == _text.Length || _text[end + 1] is ' ' or '\n');
    }

    private static bool IsOfKey(char c) => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.';

    private ScalarNode Key()
    {
        int end = _text.IndexOf(':', _at);
        var key = new ScalarNode(_text.AsSpan(_at, end - _at).ToString(), isPlain: true, _line, Column + 1);
        _at = end + 1;
        return key;
    }

    private ScalarNode? PlainToEndOfLine()
    {
        ReadOnlySpan<char> rest = _text.AsSpan(_at, EndOfLine() - _at);
        if (
            !BeginsPlain(rest)
            || rest[^1] == ':'
            || rest.Contains(": ", StringComparison.Ordinal)
            || rest.Contains(" #", StringComparison.Ordinal)
        )
            return null;
        return Scalar(rest.TrimEnd(' '), isPlain: true, rest.Length);
    }

    // Only what can be nothing else but text: signs that mean something at the beginning of a value are left out.
    private static bool BeginsPlain(ReadOnlySpan<char> text) =>
        text.Length > 0
        && (
            char.IsLetterOrDigit(text[0])
            || text[0] is '$' or '('
            || (text[0] == '-' && text.Length > 1 && char.IsAsciiDigit(text[1]))
        );

    private ScalarNode? Quoted()
    {
        ReadOnlySpan<char> rest = _text.AsSpan(_at, EndOfLine() - _at);
        char quote = rest[0];
        bool hasDoubled = false;
        int end = 1;
        while (true)
        {
            int length = rest[end..].IndexOf(quote);
            if (length < 0)
                return null;
            end += length;
            if (quote == '"' || end + 1 == rest.Length || rest[end + 1] != quote)
                break;
            hasDoubled = true;
            end += 2;
        }

        ReadOnlySpan<char> inside = rest[1..end];
        if (quote == '"' && inside.Contains('\\'))
            return null;
        ScalarNode scalar = Scalar(inside, isPlain: false, end + 1);
        return hasDoubled
            ? new ScalarNode(
                scalar.Text.Replace("''", "'", StringComparison.Ordinal),
                isPlain: false,
                _line,
                scalar.Column
            )
            : scalar;
    }

    private ScalarNode Scalar(ReadOnlySpan<char> text, bool isPlain, int length)
    {
        var scalar = new ScalarNode(text.ToString(), isPlain, _line, Column + 1);
        _at += length;
        return scalar;
    }

    // One paragraph: lines of one indentation, joined by spaces, without a line's end at the end.
    private ScalarNode? Folded(int column)
    {
        if (!_text.AsSpan(_at).StartsWith(">-\n", StringComparison.Ordinal))
            return null;
        (int line, int at) = (_line, Column + 1);
        StartLine(_at + 3);
        SkipSpaces();
        int indent = Column;
        if (indent <= column || Now == '\n')
            return null;
        _paragraph.Clear();
        while (true)
        {
            ReadOnlySpan<char> words = _text.AsSpan(_at, EndOfLine() - _at);
            if (words[^1] == ' ')
                return null;
            _paragraph.Append(words);
            _at += words.Length;
            if (GoesOn(indent) is not { } goesOn)
                return null;
            if (!goesOn)
                return new ScalarNode(_paragraph.ToString(), isPlain: false, line, at);
            _paragraph.Append(' ');
        }
    }

    // Whether the next line is of the paragraph, and then goes there. Null where it is hard to say: blank lines within
    // it, blank lines with spaces, and lines set in deeper have rules of their own.
    private bool? GoesOn(int indent)
    {
        if (IsAtEnd)
            return false;
        int start = _at + 1,
            content = start;
        while (content < _text.Length && _text[content] is ' ' or '\n')
            content++;
        int lastLine = _text.LastIndexOf('\n', content - 1) + 1;
        bool isOver = content == _text.Length || content - lastLine < indent;
        if (isOver)
            return _text.AsSpan(start, (content == _text.Length ? content : lastLine) - start).Contains(' ')
                ? null
                : false;
        if (lastLine != start || content - lastLine > indent)
            return null;
        StartLine(start);
        _at = content;
        return true;
    }
}
