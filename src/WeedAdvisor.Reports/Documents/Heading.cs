using System.Collections.Immutable;

namespace WeedAdvisor.Reports.Documents;

/// <summary>How much a heading stands over, the most first.</summary>
public enum HeadingLevel
{
    /// <summary>A whole document.</summary>
    Title,

    /// <summary>An area.</summary>
    Area,

    /// <summary>A large part of an area, such as a second year.</summary>
    Part,

    /// <summary>A section.</summary>
    Section,

    /// <summary>A few lines of a section.</summary>
    Minor,
}

/// <summary>A heading.</summary>
/// <param name="Level">What it stands over.</param>
/// <param name="Text">What it says, with capitals where a sentence has them.</param>
public sealed record Heading(HeadingLevel Level, Line Text) : Block
{
    /// <summary>Lines that belong to the heading.</summary>
    public ImmutableArray<Line> Below { get; init; } = [];

    /// <summary>Whether a rule closes it as well as opens it.</summary>
    public bool IsBoxed { get; init; }

    /// <summary>A heading over a section.</summary>
    public static Heading Section(Line text) => new(HeadingLevel.Section, text);
}
