using CsCheck;
using WeedAdvisor.Planning.Rates.Units;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Tests.Documents;

/// <summary>
/// Documents drawn at random, with every block but drawings, and letters that mean something to a medium.
/// </summary>
internal static class RandomDocuments
{
    private static readonly Gen<string> s_words = Gen.String[
            Gen.Char["ab c<>&\"'*_`[]|#-+.=1)\\~!{}\u001b\u202e\u00e9\u4e16\u0301"],
            0,
            30
        ]
        .Select(text => "x" + text);

    private static readonly Gen<TextPart> s_part = Gen.OneOf(
        s_words.Select(text => (TextPart)new Words(text)),
        s_words.Select(text => (TextPart)new Named(text)),
        Gen.Select(Gen.Int[1, 99_999], Pick("lb/acre", "kg", "ft2", "L"))
            .Select((cents, unit) => Quantity.Of(cents / 100m, unit))
            .Select(quantity => (TextPart)new Measured([quantity, quantity.To(OtherUnits.Of(quantity.Unit)!)], 4)),
        Gen.Select(Gen.Int[-9_999_999, 9_999_999], Pick("$", "h", "%", "", "pots"), Pick("#,0", "0.00", "#,0.##"))
            .Select((cents, unit, digits) => (TextPart)new Amount(cents / 100m, unit, digits))
    );

    private static readonly Gen<Line> s_line = Gen.Select(
            s_part.Array[1, 4],
            Gen.Enum<Tone>(),
            Pick<string?>(null, "mulch-pots", "a<b\"&")
        )
        .Select((parts, tone, action) => new Line([.. parts]) { Tone = tone, Action = action });

    private static readonly Gen<Block> s_leaf = Gen.OneOf(
        Gen.Const((Block)new Blank()),
        s_line.Select(line => (Block)new Paragraph(line)),
        s_line.Select(line => (Block)new Hanging(line)),
        Gen.Select(s_words, s_line).Select((label, line) => (Block)new Keyed(label + ": ", line)),
        s_words.Array[1, 3].Select(lines => (Block)new Verbatim([.. lines])),
        Gen.Select(s_words, s_line, Gen.Bool)
            .Select((key, line, beside) => (Block)new Citation(key, line) { IsBeside = beside }),
        Gen.Select(s_line, s_line.Array[1, 3])
            .Array[1, 4]
            .Select(entries =>
                (Block)new FieldList([.. entries.Select(entry => new FieldEntry(entry.Item1, [.. entry.Item2]))], 20)
            ),
        Table()
    );

    /// <summary>A document.</summary>
    public static Gen<Document> Any { get; } =
        Gen.Select(s_line, Blocks(2).Array[0, 3])
            .Select((title, blocks) => new Document(title, [.. blocks.SelectMany(all => all)]));

    private static Gen<T> Pick<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(at => values[at]);

    private static Gen<Block[]> Blocks(int depth) =>
        Gen.Select(
                Gen.OneOf(
                    s_leaf,
                    Gen.Select(Gen.Enum<HeadingLevel>(), s_line, s_line.Array[0, 2], Gen.Bool)
                        .Select(
                            (level, text, below, isBoxed) =>
                                (Block)
                                    new Heading(level, text)
                                    {
                                        Below = level == HeadingLevel.Section ? [] : [.. below],
                                        IsBoxed = isBoxed,
                                    }
                        ),
                    Items(depth)
                ),
                Gen.Int[0, 8]
            )
            .Select((block, indent) => block with { Indent = indent })
            .Array[0, 4];

    private static Gen<Block> Items(int depth) =>
        Gen.Select(
                Pick(Item.Dash, Item.Open, Item.Rank(3), "[yes] "),
                s_line,
                depth == 0 ? Gen.Const(Array.Empty<Block>()) : s_leaf.Array[0, 2]
            )
            .Array[1, 3]
            .Select(items =>
                (Block)
                    new ItemList([
                        .. items.Select(item => new Item(item.Item1, item.Item2) { Below = [.. item.Item3] }),
                    ])
            );

    private static Gen<Block> Table() =>
        Gen.Int[1, 4]
            .SelectMany(count =>
                Gen.Select(
                        Gen.Select(s_words, Gen.Int[6, 24], Gen.Bool).Array[count],
                        Gen.Select(s_line, s_line.Array[count], s_words).Array[1, 3],
                        Gen.Bool
                    )
                    .Select(
                        (columns, rows, isAbove) =>
                            (Block)
                                new Table(
                                    [
                                        .. columns.Select(column => new Column(column.Item1, column.Item2)
                                        {
                                            IsText = column.Item3,
                                        }),
                                    ],
                                    [.. rows.Select(row => new Row(row.Item1, [.. row.Item2]) { Remark = row.Item3 })]
                                )
                                {
                                    HeadPlace = isAbove ? RowHeadPlace.Above : RowHeadPlace.Beside,
                                    HeadWidth = isAbove ? 0 : 20,
                                    CellIndent = 2,
                                }
                    )
            );
}
