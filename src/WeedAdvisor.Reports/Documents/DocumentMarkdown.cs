using System.Text;

namespace WeedAdvisor.Reports.Documents;

/// <summary>A document as Markdown (CommonMark, with the pipe tables that most readers take).</summary>
public static class DocumentMarkdown
{
    private const int DrawnWidth = 80;

    /// <summary>The document; lines end with a line feed.</summary>
    public static string Of(Document document)
    {
        var text = new StringBuilder();
        text.Append($"# {MarkdownLetters.Of(document.Title)}\n\n");
        WriteAll(text, document.Blocks, "");
        return text.ToString().TrimEnd('\n') + "\n";
    }

    private static void WriteAll(StringBuilder text, IEnumerable<Block> blocks, string left)
    {
        foreach (Block block in blocks)
            Write(text, block, left);
    }

    private static void Write(StringBuilder text, Block block, string left)
    {
        switch (block)
        {
            case Blank:
                break;
            case Heading heading:
                Head(text, heading, left);
                break;
            case Paragraph paragraph:
                text.Append($"{left}{Said(paragraph.Text)}\n\n");
                break;
            case Hanging hanging:
                text.Append($"{left}{Said(hanging.Text)}\n\n");
                break;
            case Keyed keyed:
                text.Append($"{left}**{MarkdownLetters.Of(keyed.Label)}** {Said(keyed.Text)}\n\n");
                break;
            case Citation citation:
                string source = citation.Text is { } known ? " " + MarkdownLetters.Of(known) : "";
                text.Append($"{left}**{MarkdownLetters.Of($"[{citation.Key}]")}**{source}\n\n");
                break;
            case ItemList { Items.IsEmpty: true }:
                break;
            case ItemList list:
                Items(text, list, left);
                break;
            case FieldList fields:
                Fields(text, fields, left);
                break;
            case Table table:
                MarkdownTable.Write(text, table, left);
                break;
            case Drawing drawing:
                Draw(text, drawing, left);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block, "a block without Markdown");
        }
    }

    private static void Head(StringBuilder text, Heading heading, string left)
    {
        int marks = heading.Level switch
        {
            HeadingLevel.Title => 1,
            HeadingLevel.Area => 2,
            HeadingLevel.Minor => 4,
            _ => 3,
        };
        text.Append($"{left}{new string('#', marks)} {MarkdownLetters.Of(heading.Text)}\n\n");
        foreach (Line line in heading.Below)
            text.Append($"{left}{Said(line)}\n\n");
    }

    private static string Said(Line line) =>
        line.Tone == Tone.Warning ? $"**{MarkdownLetters.Of(line)}**" : MarkdownLetters.Of(line);

    private static void Items(StringBuilder text, ItemList list, string left)
    {
        foreach (Item item in list.Items)
        {
            string mark = item.Mark == Item.Dash ? "" : MarkdownLetters.Of(item.Mark) + " ";
            text.Append($"{left}- {mark}{Said(item.Text)}\n");
            if (item.Below.IsEmpty)
                continue;
            text.Append('\n');
            WriteAll(text, item.Below, left + "  ");
        }

        text.Append('\n');
    }

    private static void Fields(StringBuilder text, FieldList fields, string left)
    {
        foreach (FieldEntry entry in fields.Entries)
        {
            string values = string.Join("; ", entry.Values.Select(MarkdownLetters.Of));
            text.Append($"{left}- **{MarkdownLetters.Of(entry.Label)}** {values}\n");
        }

        text.Append('\n');
    }

    // Characters keep their columns inside a fence; no name in it can close it.
    private static void Draw(StringBuilder text, Drawing drawing, string left)
    {
        string drawn = DocumentText.Of([drawing], DrawnWidth).TrimEnd('\n');
        string fence = "```";
        while (drawn.Contains(fence, StringComparison.Ordinal))
            fence += "`";
        text.Append($"{left}{fence}text\n");
        foreach (string line in drawn.Split('\n'))
            text.Append($"{left}{line}\n");
        text.Append($"{left}{fence}\n\n");
    }
}
