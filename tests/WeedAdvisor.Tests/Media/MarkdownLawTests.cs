using CsCheck;
using Markdig;
using WeedAdvisor.Golden;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Tests.Documents;

namespace WeedAdvisor.Tests.Media;

/// <summary>
/// Markdown is read by a reader that shares nothing with the writer: the one that comes with the screens.
/// </summary>
public sealed class MarkdownLawTests
{
    private static readonly MarkdownPipeline s_reader = new MarkdownPipelineBuilder().UsePipeTables().Build();

    [Fact]
    public void A_reader_of_Markdown_reads_everything_that_a_document_says() =>
        RandomDocuments.Any.Sample(
            document =>
            {
                string read = Saying.Bare(Markdown.ToPlainText(DocumentMarkdown.Of(document), s_reader));
                Assert.All(Saying.Parts(document), part =>
                    Assert.Contains(Saying.Bare(part), read, StringComparison.Ordinal)
                );
            },
            iter: Sizes.Of(200, 5000)
        );

    [Fact]
    public void No_letter_of_a_document_becomes_a_mark()
    {
        Line odd = "*a* _b_ `c` [d](e) <f> # g | h & i &lt; \\ ~~j~~ 1. k";
        string html = Markdown.ToHtml(
            DocumentMarkdown.Of(new Document(odd, [new Paragraph(odd), ItemList.Dashes([odd])])),
            s_reader
        );
        foreach (string element in (string[])["<em", "<code", "<a ", "<f>", "<del", "<ol"])
            Assert.DoesNotContain(element, html, StringComparison.Ordinal);
        Assert.Contains("<h1>", html, StringComparison.Ordinal);
    }
}
