using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Season;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Tests.Documents;

public sealed class StripTests
{
    private static readonly Strip s_strip = new(
        [
            .. new[] { "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec", "Jan", "Feb", "Mar" }.Select(
                (name, i) => (i * 13 / 3, name)
            ),
        ],
        [
            .. Enumerable
                .Range(0, 52)
                .Select(week =>
                    week == 3 ? 'A'
                    : week == 40 ? 'B'
                    : (char?)null
                ),
        ],
        ['A', 'B'],
        [.. Enumerable.Range(0, 52).Select(week => week is > 44 and < 50)],
        [
            new StripRow("spurge", "SPURGE", [.. Enumerable.Range(0, 52).Select(week => (Cover)(week % 4))]),
            new StripRow(
                "bittercress",
                "HAIRY BITTERCRESS IN THE YARD",
                [.. Enumerable.Range(0, 52).Select(week => (Cover)(week % 3))]
            ),
        ]
    );

    [Fact]
    public void Every_week_stands_on_a_page_of_any_width() =>
        Gen.Int[Page.Narrowest, 120]
            .Sample(
                width =>
                {
                    string[] lines = DocumentText
                        .Of([new StripDrawing("a year", s_strip)], width)
                        .TrimEnd('\n')
                        .Split('\n');
                    Assert.All(lines, line => Assert.True(line.Length <= width, line));
                    for (int row = 0; row < s_strip.Rows.Length; row++)
                    {
                        // No name holds a letter that stands for a week.
                        char first = s_strip.Rows[row].Name[0];
                        IEnumerable<string> parts = lines
                            .Where(line => line.StartsWith(first))
                            .Select(line => line[line.IndexOfAny([.. "#+o."])..]);
                        Assert.Equal(
                            string.Concat(s_strip.Rows[row].Weeks.Select(StripText.Character)),
                            string.Concat(parts)
                        );
                    }

                    string all = string.Concat(lines);
                    Assert.All(s_strip.Letters, letter => Assert.Contains(letter, all));
                },
                iter: Sizes.Of(80, 80)
            );

    [Fact]
    public void A_colour_is_no_letter()
    {
        var document = new Document("a year", [new StripDrawing("a year", s_strip)]);
        string coloured = DocumentText.Of(document, 40, colour: true);
        Assert.NotEqual(DocumentText.Of(document, 40), coloured);
        Assert.Equal(
            DocumentText.Of(document, 40),
            System.Text.RegularExpressions.Regex.Replace(coloured, "\u001b\\[[0-9]*m", "")
        );
    }

    [Fact]
    public void In_Html_and_Markdown_the_year_is_drawn_with_its_names()
    {
        var document = new Document("a year", [new StripDrawing("a year & more", s_strip)]);
        string html = System.Xml.Linq.XDocument.Parse(DocumentHtml.Of(document)).Root!.Value;
        Assert.All(s_strip.Rows, row => Assert.Contains(row.Name, html, StringComparison.Ordinal));
        Assert.Contains(".o+#.o+#", DocumentMarkdown.Of(document), StringComparison.Ordinal);
    }
}
