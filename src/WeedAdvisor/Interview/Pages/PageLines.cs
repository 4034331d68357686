using System.Collections.Immutable;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Interview.Pages;

/// <summary>What pages on the screen are made of, and how they become lines.</summary>
public static class PageLines
{
    /// <summary>The blocks in lines that fit, with tone and action.</summary>
    /// <param name="blocks">What the page says.</param>
    /// <param name="width">Columns.</param>
    public static ImmutableArray<AdviceLine> Of(IEnumerable<Block> blocks, int width) =>
        AdviceLine.Of(DocumentScreen.Of(blocks, width));

    /// <summary>A heading with room before it.</summary>
    public static IEnumerable<Block> Head(string text) =>
        [new Blank(), new Heading(HeadingLevel.Minor, Line.FromString(text) with { Tone = Tone.Strong })];

    /// <summary>A line behind a mark.</summary>
    public static Block Marked(string mark, string text, Tone tone = Tone.Normal, string? action = null) =>
        ItemList.One(mark, Line.FromString(text) with { Tone = tone, Action = action });

    /// <summary>A line that stands in by so many columns.</summary>
    public static Block In(int indent, string text, Tone tone = Tone.Normal, string? action = null) =>
        new Paragraph(Line.FromString(text) with { Tone = tone, Action = action }).At(indent);
}
