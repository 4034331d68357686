namespace WeedAdvisor.Knowledge.Yaml;

/// <summary>A stretch of a text.</summary>
/// <param name="Start">The first character, from 0.</param>
/// <param name="End">The character after the last.</param>
internal readonly record struct Extent(int Start, int End);

/// <summary>A node of a parsed file. Lines and columns count from 1.</summary>
internal abstract class Node(int line, int column)
{
    /// <summary>The line on which it begins.</summary>
    public int Line { get; } = line;

    /// <summary>The column at which it begins.</summary>
    public int Column { get; } = column;

    /// <summary>
    /// Where it stands in the text, in a file that may be patched; the nodes of others don't know it. What the parser
    /// calls the end of a list or map without brackets may lie beyond it.
    /// </summary>
    public Extent Extent { get; init; }

    /// <summary>Whether it is a list or map in brackets.</summary>
    public bool IsFlow { get; init; }

    /// <summary>What it is, for a problem's text.</summary>
    public abstract string Described { get; }
}

/// <summary>Plain text. What it means (a word, a number, a date) is decided by the schema, never by the text.</summary>
internal sealed class ScalarNode(string text, bool isPlain, int line, int column) : Node(line, column)
{
    private const int LongestShown = 40;

    /// <summary>The text, unescaped and unfolded.</summary>
    public string Text { get; } = text;

    /// <summary>Whether nothing stands here at all: a key without a value.</summary>
    public bool IsNothing => isPlain && Text.Length == 0;

    /// <inheritdoc/>
    public override string Described =>
        IsNothing ? "nothing"
        : Text.Length <= LongestShown ? $"'{Text}'"
        : $"'{Text[..LongestShown]}...'";
}

/// <summary>A list.</summary>
internal sealed class SequenceNode(IReadOnlyList<Node> items, int line, int column) : Node(line, column)
{
    /// <summary>The items, in order.</summary>
    public IReadOnlyList<Node> Items { get; } = items;

    /// <inheritdoc/>
    public override string Described => Items.Count == 0 ? "an empty list" : "a list";
}

/// <summary>A key of a mapping and what stands under it.</summary>
internal sealed record Entry(ScalarNode Key, Node Value);

/// <summary>Keys with values, in the order of the file; no key twice.</summary>
internal sealed class MappingNode(Entry[] entries, int line, int column) : Node(line, column)
{
    /// <summary>The entries, in order.</summary>
    public IReadOnlyList<Entry> Entries => entries;

    /// <inheritdoc/>
    public override string Described => entries.Length == 0 ? "an empty map" : "a map of keys";

    /// <summary>The value under the key, or null. Records have few keys, so looking through them is quickest.</summary>
    public Node? Find(string key)
    {
        foreach (Entry entry in entries)
        {
            if (string.Equals(entry.Key.Text, key, StringComparison.Ordinal))
                return entry.Value;
        }

        return null;
    }
}
