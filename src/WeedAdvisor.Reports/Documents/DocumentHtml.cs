using System.Text;

namespace WeedAdvisor.Reports.Documents;

/// <summary>
/// A document as one HTML page that stands by itself: no script, nothing from elsewhere, readable on paper. It is
/// well-formed XML too.
/// </summary>
public static class DocumentHtml
{
    /// <summary>The page; lines end with a line feed.</summary>
    public static string Of(Document document)
    {
        var html = new StringBuilder();
        string title = HtmlLetters.Of(document.Title.Text);
        html.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n")
            .Append($"<title>{title}</title>\n<style>{HtmlStyle.Sheet}</style>\n</head>\n<body>\n<h1>{title}</h1>\n");
        WriteAll(html, document.Blocks, new HtmlPage());
        return html.Append("</body>\n</html>\n").ToString();
    }

    private static void WriteAll(StringBuilder html, IEnumerable<Block> blocks, HtmlPage page)
    {
        foreach (Block block in blocks)
            Write(html, block, page);
    }

    private static void Write(StringBuilder html, Block block, HtmlPage page)
    {
        switch (block)
        {
            case Blank:
                break;
            case Heading heading:
                Head(html, heading, page.Ranks.Of(heading.Level));
                break;
            case Paragraph paragraph:
                html.Append($"<p>{HtmlLetters.Of(paragraph.Text)}</p>\n");
                break;
            case Hanging hanging:
                html.Append($"<p>{HtmlLetters.Of(hanging.Text)}</p>\n");
                break;
            case Keyed keyed:
                string label = keyed.Label.Trim() is { Length: > 0 } named ? $"<b>{HtmlLetters.Of(named)}</b> " : "";
                html.Append($"<p>{label}{HtmlLetters.Of(keyed.Text)}</p>\n");
                break;
            case Verbatim verbatim:
                html.Append($"<pre>{string.Join('\n', verbatim.Lines.Select(HtmlLetters.Of))}</pre>\n");
                break;
            case Citation citation:
                string source = citation.Text is { } text ? " " + HtmlLetters.Of(text) : "";
                html.Append($"<p class=\"source\"><b>[{HtmlLetters.Of(citation.Key)}]</b>{source}</p>\n");
                break;
            case ItemList { Items.IsEmpty: true }:
                break;
            case ItemList list:
                Items(html, list, page);
                break;
            case FieldList fields:
                Fields(html, fields);
                break;
            case Table table:
                HtmlTable.Write(html, table);
                break;
            case Drawing drawing:
                HtmlDrawings.Write(html, drawing, ++page.Drawings);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block, "a block without HTML");
        }
    }

    private static void Head(StringBuilder html, Heading heading, int rank)
    {
        html.Append($"<h{rank}>{HtmlLetters.Of(heading.Text)}</h{rank}>\n");
        foreach (Line line in heading.Below)
            html.Append($"<p>{HtmlLetters.Of(line)}</p>\n");
    }

    private static void Items(StringBuilder html, ItemList list, HtmlPage page)
    {
        bool isPlain = list.Items.All(item => item.Mark == Item.Dash);
        html.Append(isPlain ? "<ul>\n" : "<ul class=\"marks\">\n");
        foreach (Item item in list.Items)
        {
            string mark = isPlain ? "" : $"<span class=\"mark\">{HtmlLetters.Of(item.Mark.Trim())}</span> ";
            html.Append($"<li>{mark}{HtmlLetters.Of(item.Text)}");
            if (!item.Below.IsEmpty)
                html.Append('\n');
            WriteAll(html, item.Below, page);
            html.Append("</li>\n");
        }

        html.Append("</ul>\n");
    }

    private static void Fields(StringBuilder html, FieldList fields)
    {
        html.Append("<table>\n");
        foreach (FieldEntry entry in fields.Entries)
        {
            string values = string.Join("<br/>", entry.Values.Select(HtmlLetters.Of));
            html.Append(
                $"<tr><th scope=\"row\">{HtmlLetters.Of(entry.Label)}</th><td class=\"text\">{values}</td></tr>\n"
            );
        }

        html.Append("</table>\n");
    }

    /// <summary>What is counted through one page.</summary>
    private sealed class HtmlPage
    {
        public HeadingRanks Ranks { get; } = new();

        public int Drawings { get; set; }
    }
}
