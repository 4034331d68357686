using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Units;

/// <summary>
/// A document with its quantities in the units wanted, before any medium writes it: so all media say the same. A block
/// that keeps its units, such as a working, names as they were given, and citations stay as they are.
/// </summary>
/// <param name="units">The units wanted.</param>
/// <param name="names">Names that somebody gave, which are no quantities whatever they look like.</param>
public sealed class DocumentUnits(UnitsWanted units, ImmutableArray<string> names)
{
    /// <summary>The names that stand in the pages of a visit.</summary>
    public static ImmutableArray<string> NamesIn(Visit visit) =>
        [
            .. new[] { visit.Title, visit.Nursery }
                .Concat(visit.Areas.Concat(visit.Elsewhere).Select(area => area.Name))
                .OfType<string>()
                .Where(name => name.Any(char.IsAsciiDigit)),
        ];

    /// <summary>A document in units; itself where none are wanted.</summary>
    public static Document In(Document document, UnitsWanted? units, ImmutableArray<string> names) =>
        units is { } wanted ? new DocumentUnits(wanted, names).Of(document) : document;

    /// <summary>Blocks in units; themselves where none are wanted.</summary>
    public static IEnumerable<Block> In(IEnumerable<Block> blocks, UnitsWanted? units, ImmutableArray<string> names) =>
        units is { } wanted ? blocks.Select(new DocumentUnits(wanted, names).Of) : blocks;

    private Document Of(Document document) => new(Of(document.Title), [.. document.Blocks.Select(Of)]);

    private Block Of(Block block) =>
        block.KeepsUnits
            ? block
            : block switch
            {
                Heading heading => heading with { Text = Of(heading.Text), Below = [.. heading.Below.Select(Of)] },
                Paragraph paragraph => paragraph with { Text = Of(paragraph.Text) },
                Hanging hanging => hanging with { Text = Of(hanging.Text) },
                Keyed keyed => keyed with { Text = Of(keyed.Text) },
                ItemList list => list with { Items = [.. list.Items.Select(Of)] },
                FieldList fields => fields with
                {
                    Entries =
                    [
                        .. fields.Entries.Select(entry => new FieldEntry(
                            Of(entry.Label),
                            [.. entry.Values.Select(Of)]
                        )),
                    ],
                },
                Table table => table with { Rows = [.. table.Rows.Select(Of)] },
                Blank or Verbatim or Citation or Drawing => block,
                _ => throw new ArgumentOutOfRangeException(nameof(block), block, "a block without units"),
            };

    private Item Of(Item item) => item with { Text = Of(item.Text), Below = [.. item.Below.Select(Of)] };

    private Row Of(Row row) =>
        row with
        {
            Head = Of(row.Head),
            Cells = [.. row.Cells.Select(Of)],
            Remark = QuantityInText.In(row.Remark, units, names),
        };

    private Line Of(Line line) =>
        line with
        {
            Parts =
            [
                .. line.Parts.Select(part =>
                    part switch
                    {
                        Measured measured => measured.In(units),
                        Words words => new Words(QuantityInText.In(words.Text, units, names)),
                        _ => part,
                    }
                ),
            ],
        };
}
