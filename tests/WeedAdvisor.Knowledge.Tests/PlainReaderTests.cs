using System.Text;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Knowledge.Yaml;
using WeedAdvisor.World;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>
/// The quick reader of plain files reads what the parser (YamlDotNet, by the YAML 1.2 standard) reads, place by place,
/// or leaves the file to it.
/// </summary>
public sealed class PlainReaderTests
{
    // What begins, ends or joins something in YAML, so that most changes hurt.
    private static readonly string[] s_sharp =
    [
        .. " \n\t\r:-?,[]{}#&*!|>'\"%@`\\a1\u2028é(".Select(c => c.ToString()),
        ": ",
        " #",
        "- ",
        "\n  ",
        "\n\n",
        ">-\n",
        "''",
        "? ",
        "---\n",
        "...\n",
        "  ",
        "a: b\n",
        "{a: b}",
        "[a,\n",
    ];

    private static readonly string[] s_pieces =
    [
        "a: b\n",
        "b: -1.5\n",
        "id: x y (z) [q], 'r'\n",
        "c:\n",
        "- ",
        "- a\n",
        "  ",
        "    ",
        "\n",
        "# note: - x\n",
        "d: >-\n",
        "word and word\n",
        "[a, 'b: c', \"d\"]\n",
        "{a: [1, 2], b: {c: d}}\n",
        "[a,\n   b, ",
        "c]\n",
        "e: \"t: u\"\n",
        "f: 'it''s'\n",
        "g: 12:30\n",
        "[any: {a: b}, c: d]\n",
        "[]\n",
        "{}\n",
        "h: a #b\n",
        "'q': r\n",
    ];

    private static readonly Gen<(double At, int Gone, string With)> s_change = Gen.Select(
        Gen.Double[0, 1],
        Gen.Int[0, 3],
        Gen.OneOf(Gen.OneOf(s_sharp), Gen.Const(""))
    );

    public static TheoryData<string> ShippedFiles() =>
        [
            .. Directory
                .EnumerateFiles(Repository.Rules, "*.yaml", SearchOption.AllDirectories)
                .Select(path => Path.GetRelativePath(Repository.Rules, path))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(ShippedFiles))]
    public void A_shipped_file_is_plain_and_read_alike(string file)
    {
        string text = File.ReadAllText(Path.Combine(Repository.Rules, file));

        Assert.Equal(Parsed(text), Told(PlainReader.Read(text)));
    }

    [Fact]
    public void Shipped_files_with_changed_letters_are_read_alike_or_left_to_the_parser()
    {
        string[] texts =
        [
            .. ShippedFiles()
                .Select(file => File.ReadAllText(Path.Combine(Repository.Rules, file.Data)))
                .Where(text => text.Length < 8000),
        ];
        Gen.Select(Gen.OneOf(texts), s_change.Array[1, 3])
            .Sample((text, changes) => IsReadAlike(Changed(text, changes)), iter: Sizes.Of(1000, 200_000));
    }

    [Fact]
    public void Drawn_texts_are_read_alike_or_left_to_the_parser()
    {
        int read = 0;
        int all = Sizes.Of(4000, 2_000_000);
        Gen.OneOf(s_pieces)
            .Array[1, 9]
            .Select(string.Concat)
            .Sample(
                text =>
                {
                    if (PlainReader.Read(text) is not null)
                        Interlocked.Increment(ref read);
                    return IsReadAlike(text);
                },
                iter: all
            );
        Assert.InRange(read, all / 20, all);
    }

    [Theory]
    [InlineData("a: b # c\n")]
    [InlineData("a: &b c\n")]
    [InlineData("a: b\na: c\n")]
    [InlineData("a: b\n  c\n")]
    [InlineData("a: >-\n  b\n\n  c\n")]
    [InlineData("a: >-\n  b\n   c\n")]
    [InlineData("a: [b\n")]
    [InlineData("a: \"b\\n\"\n")]
    [InlineData("a:\tb\n")]
    [InlineData("just words\n")]
    [InlineData("")]
    public void What_is_not_plain_is_left_to_the_parser(string text) => Assert.Null(PlainReader.Read(text));

    private static bool IsReadAlike(string text) =>
        SourceText.Accept("", text, int.MaxValue, out _) is not { } accepted
        || PlainReader.Read(accepted) is not { } root
        || Told(root) == Parsed(accepted);

    // With what the parser's reader complains of: where there is any of it, a file is not plain.
    private static string Parsed(string text)
    {
        ParsedFile parsed = TreeBuilder.Build("", text);
        return Told(parsed.Root) + string.Join('\n', parsed.Problems);
    }

    private static string Told(Node? root)
    {
        var told = new StringBuilder();
        Tell(root);
        return told.ToString();

        void Tell(Node? node)
        {
            told.Append($"{node?.Line}:{node?.Column} ");
            switch (node)
            {
                case ScalarNode scalar:
                    told.AppendLine($"{(scalar.IsNothing ? "nothing" : "text")} {scalar.Text}");
                    break;
                case SequenceNode list:
                    told.AppendLine($"list of {list.Items.Count}, flow {list.IsFlow}");
                    foreach (Node item in list.Items)
                        Tell(item);
                    break;
                case MappingNode map:
                    told.AppendLine($"map of {map.Entries.Count}, flow {map.IsFlow}");
                    foreach (Entry entry in map.Entries)
                    {
                        Tell(entry.Key);
                        Tell(entry.Value);
                    }

                    break;
                default:
                    told.AppendLine("not read");
                    break;
            }
        }
    }

    private static string Changed(string text, (double At, int Gone, string With)[] changes)
    {
        foreach ((double at, int gone, string with) in changes)
        {
            int from = (int)(at * text.Length);
            text = text[..from] + with + text[Math.Min(from + gone, text.Length)..];
        }

        return text;
    }
}
