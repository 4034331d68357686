using System.Collections.Immutable;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Rates.Units;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Units;

namespace WeedAdvisor.Reports.Tests.Units;

/// <summary>Whatever units are wanted, a document says the same quantities, all of them, in every medium.</summary>
public sealed partial class UnitsLawTests
{
    private const int Narrow = 40;

    [Fact]
    public void Every_quantity_of_a_document_is_told_in_the_units_wanted_and_none_is_dropped() =>
        Gen.Select(DrawnQuantity.Any.Array[1, 12], Gen.Int[0, 5], Gen.Enum<UnitsWanted>())
            .Sample(
                (quantities, shape, units) =>
                {
                    Document document = DocumentUnits.In(Of(quantities, shape), units, []);
                    Holds(quantities, units, DocumentText.Of(document, Narrow));
                    Holds(quantities, units, XDocument.Parse(DocumentHtml.Of(document)).Root!.Value);
                    Holds(quantities, units, DocumentMarkdown.Of(document).Replace("\\", "", StringComparison.Ordinal));
                },
                iter: Sizes.Of(300, 20_000)
            );

    [Theory]
    [InlineData("Spread 1.3 to 2.5 cm of hulls.", "Spread 0.5 to 1 in of hulls.")]
    [InlineData("for 100 m² of floor", "for 1,080 ft² of floor")]
    [InlineData("Water it in with 12.7 mm within a day", "Water it in with 0.5 in within a day")]
    [InlineData("1.68 kg/ha may go on", "1.5 lb/acre may go on")]
    [InlineData("hot at 55 C, 2 times", "hot at 131 F, 2 times")]
    [InlineData("Keep 25 ft (8 m) away, in 5 in 100 pots", "Keep 25 ft away, in 5 in 100 pots")]
    [InlineData("1.68 kg active a hectare, 2.5 EC", "1.68 kg active a hectare, 2.5 EC")]
    [InlineData("weeks 3 m-long", "weeks 3 m-long")]
    public void A_sentence_of_a_rule_reads_so_in_US_units(string text, string expected) =>
        Assert.Equal(expected, Said(text, UnitsWanted.Us));

    [Theory]
    [InlineData("Keep 25 ft (8 m) away from 12 in (30 cm).", "Keep 8 m away from 30 cm.")]
    [InlineData("below 10 mph", "below 16 km/h")]
    [InlineData("Spread 2.5 cm.", "Spread 2.5 cm.")]
    public void A_sentence_of_a_rule_reads_so_in_metric_units(string text, string expected) =>
        Assert.Equal(expected, Said(text, UnitsWanted.Metric));

    [Theory]
    [InlineData(
        "Keep 25 ft (8 m) away, 2 m at least (or 3 m).",
        "Keep 25 ft (8 m) away, 2 m (6.6 ft) at least (or 3 m, 10 ft)."
    )]
    [InlineData("up to 5 cm deep", "up to 5 cm (2 in) deep")]
    public void Both_are_told_where_both_are_wanted(string text, string expected) =>
        Assert.Equal(expected, Said(text, UnitsWanted.Both));

    [Fact]
    public void A_name_that_looks_like_a_quantity_a_citation_and_a_working_stay_as_they_are()
    {
        Document document = DocumentUnits.In(
            new Document(
                "Pages",
                [
                    new Paragraph("Bench 12 m has 3 m of weeds."),
                    new Citation("one", "Bark of 5 cm on pots"),
                    new Paragraph("40 lb/acre x 2") { KeepsUnits = true },
                ]
            ),
            UnitsWanted.Us,
            ["Bench 12 m"]
        );
        Assert.Equal(
            "Pages\nBench 12 m has 10 ft of weeds.\n[one]\n    Bark of 5 cm on pots\n40 lb/acre x 2\n",
            DocumentText.Of(document, 80)
        );
    }

    [Fact]
    public void Every_unit_that_can_be_typed_has_one_of_the_same_kind_in_the_other_system_or_is_used_by_both()
    {
        foreach (Unit unit in UnitTable.Symbols.Select(UnitTable.Of))
        {
            if (OtherUnits.Of(unit) is not { } other)
            {
                Assert.Contains(unit.Symbol, (string[])["s", "min", "h", "pot", "%", "ppm"]);
                continue;
            }

            Assert.Equal(unit.Dimension, other.Dimension);
            Assert.NotEqual(OtherUnits.FamilyOf(unit), OtherUnits.FamilyOf(other));
        }
    }

    private static string Said(string text, UnitsWanted units)
    {
        IEnumerable<Block> blocks = DocumentUnits.In([new Paragraph(text)], units, ImmutableArray<string>.Empty);
        return DocumentText.Of(blocks, 160).TrimEnd('\n');
    }

    // The same lines in every block that holds lines.
    private static Document Of(DrawnQuantity[] quantities, int shape)
    {
        Line[] lines = [.. quantities.Select(quantity => quantity.Line)];
        IEnumerable<Block> blocks = shape switch
        {
            0 => lines.Select(line => new Paragraph(line)),
            1 => lines.Select(line => new Hanging(line)),
            2 => lines.Select(line => new Keyed("why: ", line)),
            3 =>
            [
                new ItemList([
                    new Item("- ", lines[0]) { Below = [.. lines.Skip(1).Select(line => new Paragraph(line))] },
                ]),
            ],
            4 => [new FieldList([.. lines.Select(line => new FieldEntry("what", [line]))], 20)],
            _ => [new Table([new Column("x", 9)], [.. lines.Select(line => new Row("one", [line]))]) { HeadWidth = 9 }],
        };
        return new Document("Drawn", [.. blocks]);
    }

    private static void Holds(DrawnQuantity[] quantities, UnitsWanted units, string page)
    {
        (string[] Numbers, string Unit)[] told =
        [
            .. Told()
                .Matches(Blanks().Replace(page, " "))
                .Select(match => (match.Groups["numbers"].Value.Split(" to "), match.Groups["unit"].Value)),
        ];
        int at = 0;
        foreach (DrawnQuantity quantity in quantities)
        {
            bool[] systems = units switch
            {
                UnitsWanted.Metric => [true],
                UnitsWanted.Us => [false],
                _ => [quantity.IsMetric, !quantity.IsMetric],
            };
            foreach (bool metric in systems)
            {
                Assert.True(at < told.Length, $"{quantity.Line} is not told on: {page}");
                Assert.True(
                    quantity.IsToldBy(told[at].Numbers, told[at].Unit, metric),
                    $"{quantity.Line} is told as {string.Join(" to ", told[at].Numbers)} {told[at].Unit}"
                );
                at++;
            }
        }

        Assert.Equal(told.Length, at);
    }

    [GeneratedRegex(@"(?<numbers>[\d,.]+(?: to [\d,.]+)?) (?<unit>[a-zA-Z²]+(?:/[a-z]+)?)(?= of it| \(|\))")]
    private static partial Regex Told();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
