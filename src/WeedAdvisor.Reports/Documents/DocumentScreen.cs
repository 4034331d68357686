using System.Collections.Immutable;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Documents;

/// <summary>A document as lines for a screen: laid out as text is, each line with its tone and its action.</summary>
public static class DocumentScreen
{
    /// <summary>The document with its title.</summary>
    public static ImmutableArray<PageLine> Of(Document document, int width) =>
        Of([new Heading(HeadingLevel.Title, document.Title with { Tone = Tone.Strong }), .. document.Blocks], width);

    /// <summary>Blocks, without what is empty before and behind them.</summary>
    /// <param name="blocks">The blocks.</param>
    /// <param name="width">Columns.</param>
    public static ImmutableArray<PageLine> Of(IEnumerable<Block> blocks, int width)
    {
        var page = Page.Pane(width);
        DocumentText.WriteAll(page, blocks, 0, colour: false);
        int first = 0,
            last = page.Lines.Count;
        while (first < last && page.Lines[first].Text.Length == 0)
            first++;
        while (last > first && page.Lines[last - 1].Text.Length == 0)
            last--;
        return [.. page.Lines.Skip(first).Take(last - first)];
    }
}
