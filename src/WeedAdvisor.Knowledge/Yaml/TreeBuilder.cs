using WeedAdvisor.Knowledge.Problems;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace WeedAdvisor.Knowledge.Yaml;

/// <summary>
/// Builds the node tree of one file from the parser's events and refuses whatever is outside our subset: anchors,
/// aliases, merge keys, tags, directives, keys that are not words, duplicate keys, further documents, deep nesting.
/// Refusing at this level means that an alias is never followed, so no file can expand.
/// </summary>
internal sealed class TreeBuilder
{
    private const int DeepestNesting = 32;

    // One broken habit can repeat on every line; a reader of the messages learns nothing from the hundredth.
    private const int MostProblems = 25;

    private readonly string _file;
    private readonly string _text;
    private readonly Parser _parser;
    private readonly List<Problem> _problems = [];
    private Mark _reached = Mark.Empty;

    private TreeBuilder(string file, string text)
    {
        _file = file;
        _text = text;
        _parser = new Parser(new StringReader(text));
    }

    /// <summary>Parses the text. Never throws: whatever the parser throws becomes a problem.</summary>
    public static ParsedFile Build(string file, string text)
    {
        var builder = new TreeBuilder(file, text);
        Node? root = builder.Guarded();
        return new ParsedFile(file, root, [.. builder._problems]);
    }

    private Node? Guarded()
    {
        try
        {
            return Document();
        }
        catch (YamlException e)
        {
            Report(e.Start, $"text that is not YAML ({Lowered(e.Message)})", "valid YAML");
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // The parser is known to throw bare exceptions of many types on broken text, not only its own.
            Report(_reached, "text that is not YAML", "valid YAML: brackets closed, quotes closed, steady indentation");
        }

        return null;
    }

    private Node? Document()
    {
        Next();
        if (Next() is not DocumentStart start)
            return Refuse(Mark.Empty, "an empty file", "at least one record");
        if (HasDirective(start))
            Report(Mark.Empty, "a directive (a line that begins with %)", "no directives");
        Node? root = Read(Next(), depth: 1);
        if (root is null)
            return null;
        Next();
        if (Next() is DocumentStart second)
            return Refuse(second.Start, "a second document (---)", "one document in a file");
        return root;
    }

    private Node? Read(ParsingEvent now, int depth)
    {
        if (depth > DeepestNesting && now is (SequenceStart or MappingStart))
            return Refuse(now.Start, $"nesting deeper than {DeepestNesting}", $"at most {DeepestNesting} levels");
        if (now is AnchorAlias alias)
            return Refuse(alias.Start, $"the alias *{alias.Value}", "the value written out: aliases are not allowed");
        if (now is NodeEvent node && !Allowed(node))
            return null;
        return now switch
        {
            Scalar scalar => Text(scalar),
            SequenceStart => List(now, depth),
            MappingStart => Map(now, depth),
            _ => Refuse(now.Start, "text that is not YAML", "a value, a list or a map of keys"),
        };
    }

    private bool Allowed(NodeEvent node)
    {
        if (!node.Anchor.IsEmpty)
            Report(node.Start, $"the anchor &{node.Anchor.Value}", "no anchors");
        if (!node.Tag.IsEmpty)
            Report(node.Start, "a tag (a word that begins with !)", "no tags; put the text in quotes");
        return _problems.Count < MostProblems;
    }

    private ScalarNode Text(Scalar scalar)
    {
        if (SourceText.HasControls(scalar.Value))
            Report(scalar.Start, "an escaped control character", "text without control characters");
        bool isPlain = scalar.Style == ScalarStyle.Plain;
        return new ScalarNode(scalar.Value, isPlain, Line(scalar.Start), Column(scalar.Start))
        {
            Extent = new Extent(Index(scalar.Start), Index(scalar.End)),
        };
    }

    private SequenceNode? List(ParsingEvent start, int depth)
    {
        var items = new List<Node>();
        ParsingEvent now;
        for (now = Next(); now is not SequenceEnd; now = Next())
        {
            if (Read(now, depth + 1) is not { } item)
                return null;
            items.Add(item);
        }

        return new SequenceNode(items, Line(start.Start), Column(start.Start))
        {
            Extent = Collected(start, now),
            IsFlow = start is SequenceStart { Style: SequenceStyle.Flow },
        };
    }

    private MappingNode? Map(ParsingEvent start, int depth)
    {
        var entries = new List<Entry>();
        var keys = new HashSet<string>(StringComparer.Ordinal);
        ParsingEvent now;
        for (now = Next(); now is not MappingEnd; now = Next())
        {
            if (Read(now, depth + 1) is not { } key || Read(Next(), depth + 1) is not { } value)
                return null;
            if (key is not ScalarNode word)
                Report(now.Start, $"{key.Described} as a key", "a word as a key");
            else if (word.Text == "<<")
                Report(now.Start, "a merge key (<<)", "the keys written out: merging is not allowed");
            else if (!keys.Add(word.Text))
                Report(now.Start, $"the key '{word.Text}' a second time", "each key once in a map");
            else
                entries.Add(new Entry(word, value));
        }

        return new MappingNode([.. entries], Line(start.Start), Column(start.Start))
        {
            Extent = Collected(start, now),
            IsFlow = start is MappingStart { Style: MappingStyle.Flow },
        };
    }

    private ParsingEvent Next()
    {
        if (!_parser.MoveNext() || _parser.Current is not { } now)
            throw new YamlException(_reached, _reached, "The text ends too early.");
        _reached = now.End;
        return now;
    }

    // The parser drops unknown directives without a word, so they are looked for in the text before the document.
    private bool HasDirective(DocumentStart start)
    {
        if (start.IsImplicit)
            return false;
        string head = _text[..(int)Math.Clamp(start.Start.Index, 0, _text.Length)];
        return start.Version is not null || head.StartsWith('%') || head.Contains("\n%", StringComparison.Ordinal);
    }

    private Node? Refuse(Mark where, string found, string expected)
    {
        Report(where, found, expected);
        return null;
    }

    private void Report(Mark where, string found, string expected)
    {
        if (_problems.Count < MostProblems)
            _problems.Add(new Problem(new Place(_file, Line(where), Column(where)), found, expected));
    }

    private static string Lowered(string message)
    {
        string line = message.Split('\n')[0].TrimEnd('.', ' ', '\r');
        return line.Length == 0 ? "unreadable" : char.ToLowerInvariant(line[0]) + line[1..];
    }

    // The parser ends a map in brackets before its bracket and a list in brackets behind it; both begin to end at it.
    private static Extent Collected(ParsingEvent start, ParsingEvent end) =>
        new(Index(start.Start), Index(end.Start) + 1);

    private static int Index(Mark mark) => (int)Math.Clamp(mark.Index, 0, int.MaxValue - 1);

    private static int Line(Mark mark) => (int)Math.Clamp(mark.Line, 1, int.MaxValue);

    private static int Column(Mark mark) => (int)Math.Clamp(mark.Column, 1, int.MaxValue);
}
