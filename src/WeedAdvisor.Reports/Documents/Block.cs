using System.Collections.Immutable;

namespace WeedAdvisor.Reports.Documents;

/// <summary>A piece of a document that stands on lines of its own.</summary>
public abstract record Block
{
    /// <summary>
    /// Columns left free before it, counted from what it stands in; media without columns leave it out.
    /// </summary>
    public int Indent { get; init; }

    /// <summary>
    /// Whether its quantities stay in their units, whatever is wanted: those of a working, which must go on to add up.
    /// </summary>
    public bool KeepsUnits { get; init; }

    /// <summary>The same block set in by so many columns.</summary>
    public Block At(int indent) => this with { Indent = indent };
}

/// <summary>Room between two blocks where lines would run together.</summary>
public sealed record Blank : Block;

/// <summary>A sentence or several.</summary>
/// <param name="Text">The sentences.</param>
public sealed record Paragraph(Line Text) : Block;

/// <summary>A sentence or several whose lines after the first stand in a little further.</summary>
/// <param name="Text">The sentences.</param>
public sealed record Hanging(Line Text) : Block;

/// <summary>Something said under a word that names it, such as <c>why: nothing speaks for it</c>.</summary>
/// <param name="Label">The word, with what parts it from the text.</param>
/// <param name="Text">What is said.</param>
public sealed record Keyed(string Label, Line Text) : Block
{
    /// <summary>The same, about an action by its id, so that its reasons can be opened from here.</summary>
    public Keyed About(string action) => this with { Text = Text with { Action = action } };
}

/// <summary>Lines that stand as they are, such as a command to be typed: never wrapped, every blank kept.</summary>
/// <param name="Lines">The lines.</param>
public sealed record Verbatim(ImmutableArray<string> Lines) : Block;

/// <summary>A source in full.</summary>
/// <param name="Key">The key by which the lines above name it.</param>
/// <param name="Text">The source; null when there is none in the list.</param>
public sealed record Citation(string Key, Line? Text) : Block
{
    /// <summary>Whether the source begins beside its key; else it stands below.</summary>
    public bool IsBeside { get; init; }
}
