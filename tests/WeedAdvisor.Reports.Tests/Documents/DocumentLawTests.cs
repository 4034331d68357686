using System.Xml.Linq;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Tests.Documents;

public sealed class DocumentLawTests
{
    private static readonly int s_many = Sizes.Of(150, 5000);

    [Fact]
    public void Text_says_everything_and_is_never_wider_than_asked() =>
        Gen.Select(RandomDocuments.Any, Gen.Int[Page.Narrowest, 120])
            .Sample(
                (document, width) =>
                {
                    string text = DocumentText.Of(document, width);
                    Assert.All(text.Split('\n'), line => Assert.True(ColumnWidth.Of(line) <= width, line));
                    SaysEverything(document, text);
                },
                iter: s_many
            );

    [Fact]
    public void Html_says_everything_and_is_well_formed() =>
        RandomDocuments.Any.Sample(
            document =>
            {
                XElement page = XDocument.Parse(DocumentHtml.Of(document)).Root!;
                SaysEverything(document, page.Value);
                string[] actions = [.. page.Descendants().Attributes("data-action").Select(one => one.Value)];
                Assert.All(Actions(document), action => Assert.Contains(action, actions));
            },
            iter: s_many
        );

    [Fact]
    public void Headings_of_a_page_leave_out_no_rank_on_the_way_down_in_Html_and_in_Markdown() =>
        RandomDocuments.Any.Sample(
            document =>
            {
                int[] ranks =
                [
                    .. XDocument
                        .Parse(DocumentHtml.Of(document))
                        .Descendants()
                        .Select(one => one.Name.LocalName)
                        .Where(name => name is ['h', >= '1' and <= '6'])
                        .Select(name => name[1] - '0'),
                ];
                Assert.Equal(1, ranks[0]);
                Assert.All(ranks.Zip(ranks.Skip(1)), pair => Assert.InRange(pair.Second, 2, pair.First + 1));
            },
            iter: s_many
        );

    [Theory]
    [InlineData("2.5 cm & more, [nc-one] #2 (a_b)", "2.5 cm & more, [nc-one] #2 (a_b)")]
    [InlineData("2. second", "2\\. second")]
    [InlineData("*a* _b_ [c](d) &amp; <e>", "\\*a\\* \\_b\\_ \\[c](d) \\&amp; \\<e>")]
    public void Markdown_escapes_what_would_be_a_mark_and_nothing_else(string text, string expected) =>
        Assert.Equal($"# T\n\n{expected}\n", DocumentMarkdown.Of(new Document("T", [new Paragraph(text)])));

    [Fact]
    public void Html_holds_no_element_but_those_of_a_page() =>
        RandomDocuments.Any.Sample(
            document =>
            {
                string[] elements =
                [
                    .. XDocument
                        .Parse(DocumentHtml.Of(document))
                        .Descendants()
                        .Select(one => one.Name.LocalName)
                        .Distinct(),
                ];
                Assert.All(elements, element => Assert.Contains(element, s_elements));
            },
            iter: s_many
        );

    [Fact]
    public void The_screen_says_what_text_says_and_knows_the_action_of_each_line() =>
        RandomDocuments.Any.Sample(
            document =>
            {
                PageLine[] lines = [.. DocumentScreen.Of(document, 60)];
                Assert.Equal(
                    DocumentText.Of(document, 60).Trim('\n'),
                    string.Join('\n', lines.Select(line => line.Text)).Trim('\n')
                );
                string[] actions = [.. lines.Select(line => line.Action).OfType<string>()];
                Assert.All(ActionsOfText(document), action => Assert.Contains(action, actions));
            },
            iter: s_many
        );

    [Fact]
    public void A_table_too_wide_for_the_page_becomes_sentences()
    {
        var table = new Table(
            [new Column("cost", 30) { Before = "cost " }, new Column("hours", 30) { After = " h" }],
            [new Row("one way", [new Amount(1234, "$", "#,0"), new Amount(12.5m, "", "0.0")]) { Remark = "now" }]
        )
        {
            HeadWidth = 10,
        };
        Assert.Equal("one way: cost $1,234, 12.5 h (now)\n", DocumentText.Of([table], 40));
    }

    [Fact]
    public void Words_in_a_column_of_words_go_on_below()
    {
        Column[] columns =
        [
            .. new[] { "now", "then" }.Select(name => new Column(name, 14) { Brief = [name], IsText = true }),
        ];
        var table = new Table([.. columns], [new Row("1", ["Mend the leaks", "Scrub the benches today"])])
        {
            HeadWidth = 3,
        };
        Assert.Equal(
            """
               now           then
            1  Mend the      Scrub the
               leaks         benches today

            """,
            DocumentText.Of([table], 40)
        );
    }

    private static readonly string[] s_elements =
    [
        "html",
        "head",
        "meta",
        "title",
        "style",
        "body",
        "h1",
        "h2",
        "h3",
        "h4",
        "h5",
        "p",
        "b",
        "span",
        "ul",
        "li",
        "table",
        "caption",
        "thead",
        "tbody",
        "tr",
        "th",
        "td",
        "br",
        "pre",
    ];

    private static void SaysEverything(Document document, string medium)
    {
        string bare = Saying.Bare(medium);
        Assert.All(Saying.Parts(document), part => Assert.Contains(Saying.Bare(part), bare, StringComparison.Ordinal));
    }

    private static IEnumerable<string> Actions(Document document) =>
        Saying.Lines(document).Skip(1).Select(line => line.Action).OfType<string>().Distinct();

    // Labels and values of fields, cells and what stands below a heading are no lines to open something from.
    private static IEnumerable<string> ActionsOfText(Document document) =>
        document
            .Blocks.Select(block =>
                block switch
                {
                    Paragraph paragraph => paragraph.Text.Action,
                    Keyed keyed => keyed.Text.Action,
                    _ => null,
                }
            )
            .OfType<string>()
            .Distinct();
}
