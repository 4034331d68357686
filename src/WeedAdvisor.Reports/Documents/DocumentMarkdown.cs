using System.Text;
using WeedAdvisor.Reports.Text;

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
        WriteAll(text, document.Blocks, "", new HeadingRanks());
        return text.ToString().TrimEnd('\n') + "\n";
    }

    private static void WriteAll(StringBuilder text, IEnumerable<Block> blocks, string left, HeadingRanks ranks)
    {
        foreach (Block block in blocks)
            Write(text, block, left, ranks);
    }

    private static void Write(StringBuilder text, Block block, string left, HeadingRanks ranks)
    {
        switch (block)
        {
            case Blank:
                break;
            case Heading heading:
                Head(text, heading, left, ranks.Of(heading.Level));
                break;
            case Paragraph paragraph:
                text.Append($"{left}{Said(paragraph.Text)}\n\n");
                break;
            case Hanging hanging:
                text.Append($"{left}{Said(hanging.Text)}\n\n");
                break;
            case Keyed keyed:
                string label = keyed.Label.Trim() is { Length: > 0 } named ? $"**{MarkdownLetters.Of(named)}** " : "";
                text.Append($"{left}{label}{Said(keyed.Text, isStart: label.Length == 0)}\n\n");
                break;
            case Verbatim verbatim:
                Fenced(text, verbatim.Lines, left);
                break;
            case Citation citation:
                string source = citation.Text is { } known ? " " + MarkdownLetters.Within(known.Text) : "";
                text.Append($"{left}**{MarkdownLetters.Of($"[{citation.Key}]")}**{source}\n\n");
                break;
            case ItemList { Items.IsEmpty: true }:
                break;
            case ItemList list:
                Items(text, list, left, ranks);
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

    private static void Head(StringBuilder text, Heading heading, string left, int rank)
    {
        text.Append($"{left}{new string('#', rank)} {MarkdownLetters.Of(heading.Text)}\n\n");
        foreach (Line line in heading.Below)
            text.Append($"{left}{Said(line)}\n\n");
    }

    private static string Said(Line line, bool isStart = true)
    {
        string said =
            isStart && line.Tone != Tone.Warning ? MarkdownLetters.Of(line.Text) : MarkdownLetters.Within(line.Text);
        return line.Tone == Tone.Warning ? $"**{said}**" : said;
    }

    private static void Items(StringBuilder text, ItemList list, string left, HeadingRanks ranks)
    {
        foreach (Item item in list.Items)
        {
            string mark = item.Mark == Item.Dash ? "" : MarkdownLetters.Of(item.Mark) + " ";
            text.Append($"{left}- {mark}{Said(item.Text, isStart: mark.Length == 0)}\n");
            if (item.Below.IsEmpty)
                continue;
            text.Append('\n');
            WriteAll(text, item.Below, left + "  ", ranks);
        }

        text.Append('\n');
    }

    private static void Fields(StringBuilder text, FieldList fields, string left)
    {
        foreach (FieldEntry entry in fields.Entries)
        {
            string values = string.Join("; ", entry.Values.Select(value => MarkdownLetters.Within(value.Text)));
            text.Append($"{left}- **{MarkdownLetters.Of(entry.Label)}** {values}\n");
        }

        text.Append('\n');
    }

    private static void Draw(StringBuilder text, Drawing drawing, string left) =>
        Fenced(text, DocumentText.Of([drawing], DrawnWidth).TrimEnd('\n').Split('\n'), left);

    // Characters keep their columns inside a fence; no name in it can close it.
    private static void Fenced(StringBuilder text, IReadOnlyCollection<string> lines, string left)
    {
        string fence = "```";
        while (lines.Any(line => line.Contains(fence, StringComparison.Ordinal)))
            fence += "`";
        text.Append($"{left}{fence}text\n");
        foreach (string line in lines)
            text.Append($"{left}{Page.Clean(line)}\n");
        text.Append($"{left}{fence}\n\n");
    }
}
