using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Documents;

/// <summary>A document as plain text for people. The same document gives the same text everywhere.</summary>
public static class DocumentText
{
    private const int HangsBy = 2;

    /// <summary>The document; lines end with a line feed.</summary>
    /// <param name="document">The document.</param>
    /// <param name="width">Columns of the page.</param>
    /// <param name="colour">Whether drawings are coloured with the control sequences of ECMA-48 (SGR).</param>
    public static string Of(Document document, int width, bool colour = false)
    {
        var page = new Page(width);
        page.Write(0, document.Title.Text);
        WriteAll(page, document.Blocks, 0, colour);
        return page.ToString();
    }

    /// <summary>Blocks without a document around them.</summary>
    /// <param name="blocks">The blocks.</param>
    /// <param name="width">Columns of the page.</param>
    public static string Of(IEnumerable<Block> blocks, int width)
    {
        var page = new Page(width);
        WriteAll(page, blocks, 0, colour: false);
        return page.ToString();
    }

    /// <summary>Writes blocks on a page that there is already.</summary>
    internal static void WriteAll(Page page, IEnumerable<Block> blocks, int left, bool colour)
    {
        foreach (Block block in blocks)
            Write(page, block, left + block.Indent, colour);
    }

    private static void Write(Page page, Block block, int left, bool colour)
    {
        switch (block)
        {
            case Blank:
                page.Gap();
                break;
            case Heading heading:
                Head(page, heading, left);
                break;
            case Paragraph paragraph:
                Say(page, left, "", paragraph.Text);
                break;
            case Hanging hanging:
                Say(page, left, "", hanging.Text, HangsBy);
                break;
            case Keyed keyed:
                Say(page, left, keyed.Label, keyed.Text);
                break;
            case Verbatim verbatim:
                foreach (string line in verbatim.Lines)
                    page.Drawn(left, line);
                break;
            case Citation citation:
                Cite(page, citation, left);
                break;
            case ItemList list:
                Items(page, list, left, colour);
                break;
            case FieldList fields:
                Fields(page, fields, left);
                break;
            case Table table:
                TextTable.Write(page, table, left);
                break;
            case Drawing drawing:
                TextDrawings.Write(page, drawing, left, colour);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block, "a block without a text");
        }
    }

    /// <summary>A line with how it is meant and what it is about.</summary>
    internal static void Say(Page page, int left, string mark, Line line, int hang = 0)
    {
        (page.Tone, page.Action) = (line.Tone, line.Action);
        page.Write(left, mark, line.Text, hang);
        (page.Tone, page.Action) = (Tone.Normal, null);
    }

    private static void Head(Page page, Heading heading, int left)
    {
        switch (heading.Level)
        {
            case HeadingLevel.Section:
                page.Tone = Tone.Strong;
                page.Heading(heading.Text.Text);
                page.Tone = Tone.Normal;
                break;
            case HeadingLevel.Area or HeadingLevel.Part:
                char rule = heading.Level == HeadingLevel.Area ? '=' : '-';
                page.Gap();
                page.Rule(rule);
                page.Tone = Tone.Strong;
                Named(page, heading, left);
                page.Tone = Tone.Normal;
                if (heading.IsBoxed)
                    page.Rule(rule);
                break;
            default:
                Named(page, heading, left);
                break;
        }
    }

    private static void Named(Page page, Heading heading, int left)
    {
        page.Write(left, heading.Text.Text);
        foreach (Line line in heading.Below)
            page.Write(left, line.Text);
    }

    private static void Cite(Page page, Citation citation, int left)
    {
        if (citation is { IsBeside: true, Text: { } beside })
        {
            page.Write(left, $"[{citation.Key}] ", beside.Text);
            return;
        }

        page.Write(left, $"[{citation.Key}]");
        if (citation.Text is { } below)
            page.Write(left + 4, below.Text);
    }

    private static void Items(Page page, ItemList list, int left, bool colour)
    {
        foreach (Item item in list.Items)
        {
            Say(page, left, item.Mark, item.Text);
            WriteAll(page, item.Below, left, colour);
        }
    }

    private static void Fields(Page page, FieldList fields, int left)
    {
        if (fields.Entries.IsEmpty)
            return;
        int widest = fields.Entries.Max(entry => ColumnWidth.Of(entry.Label.Text));
        int column = Math.Min(fields.WidestLabel, widest) + 2;
        foreach (FieldEntry entry in fields.Entries)
        {
            string label = entry.Label.Text;
            if (ColumnWidth.Of(label) > column - 2)
            {
                page.Write(left, label);
                label = "";
            }

            foreach (Line value in entry.Values)
            {
                page.Write(left, ColumnWidth.PadRight(label, column), value.Text);
                label = "";
            }
        }
    }
}
