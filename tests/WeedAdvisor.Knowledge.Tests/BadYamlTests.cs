using System.Text;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>What our subset of YAML leaves out, and what is no YAML at all.</summary>
public sealed class BadYamlTests
{
    [Theory]
    [InlineData("version: &v 0.1.0\n", "1:10: found the anchor &v; expected no anchors")]
    [InlineData("version: *v\n", "found the alias *v; expected the value written out: aliases are not allowed")]
    [InlineData(
        "version: 0.1.0\n<<: {version: 0.2.0}\n",
        "2:1: found a merge key (<<); expected the keys written out: merging is not allowed"
    )]
    [InlineData(
        "version: !!str 0.1.0\n",
        "1:10: found a tag (a word that begins with !); expected no tags; put the text in quotes"
    )]
    [InlineData("version: ! 0.1.0\n", "found a tag")]
    [InlineData(
        "version: 0.1.0\nversion: 0.2.0\n",
        "2:1: found the key 'version' a second time; expected each key once in a map"
    )]
    [InlineData("version: 0.1.0\n\"version\": 0.2.0\n", "2:1: found the key 'version' a second time")]
    [InlineData(
        "version: 0.1.0\n---\nversion: 0.2.0\n",
        "2:1: found a second document (---); expected one document in a file"
    )]
    [InlineData(
        "%YAML 1.1\n---\nversion: 0.1.0\n",
        "found a directive (a line that begins with %); expected no directives"
    )]
    [InlineData("%SOMETHING else\n---\nversion: 0.1.0\n", "found a directive")]
    [InlineData("", "1:1: found an empty file; expected at least one record")]
    [InlineData("# just a comment\n", "found an empty file")]
    [InlineData("version: 0.1.0\n? [a, b]\n: c\n", "2:3: found a list as a key; expected a word as a key")]
    [InlineData("version: [0.1.0\n", "expected valid YAML")]
    [InlineData(
        "version: [0.1.0\nnext: x\n",
        "expected valid YAML: brackets closed, quotes closed, steady indentation"
    )]
    [InlineData("version: \"0.1.0\n", "expected valid YAML")]
    [InlineData("version: a: b\n", "1:11: found text that is not YAML")]
    [InlineData("version: 0.1.0\n\tx: 1\n", "expected valid YAML")]
    [InlineData(
        "version: 0.1.0\0rest\n",
        "1:15: found the control character U+0000; expected text without control characters"
    )]
    [InlineData("# \u001B[31m red\nversion: 0.1.0\n", "1:3: found the control character U+001B")]
    [InlineData("version: \"0.1.0\\e[31m\"\n", "found an escaped control character")]
    [InlineData("version:\n", "found nothing; expected text")]
    [InlineData("- version: 0.1.0\n", "found a list; expected the version, as a map of keys")]
    [InlineData("just words\n", "found 'just words'; expected the version, as a map of keys")]
    public void Is_refused(string text, string expected)
    {
        Outcome<KnowledgeBase, Problem> outcome = new FixtureKnowledge().With("knowledge.yaml", text).Load();

        Assert.Contains(outcome.Refusals, problem => problem.ToString().Contains(expected, StringComparison.Ordinal));
        Assert.All(outcome.Refusals, problem => Assert.Equal("knowledge.yaml", problem.Where.File));
    }

    [Theory]
    [InlineData("--- # a comment\nversion: 0.1.0\n...\n")]
    [InlineData("version: '0.1.0'\r\n")]
    [InlineData("{ version: 0.1.0 }")]
    public void Is_accepted(string text) =>
        Assert.Equal("0.1.0", new FixtureKnowledge().With("knowledge.yaml", text).Load().Value?.Stamp.Version);

    [Fact]
    public void Thirty_two_levels_are_read_and_thirty_three_are_refused()
    {
        Assert.DoesNotContain("nesting", Nested(31).Refusals[0].Found, StringComparison.Ordinal);
        Assert.Equal("nesting deeper than 32", Nested(32).Refusals[0].Found);
        Assert.Equal("nesting deeper than 32", Nested(100_000).Refusals[0].Found);

        static Outcome<KnowledgeBase, Problem> Nested(int depth) =>
            new FixtureKnowledge().With("knowledge.yaml", "version: " + new string('[', depth) + "x").Load();
    }

    [Fact]
    public void An_alias_bomb_is_refused_without_being_followed()
    {
        var bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 10; i++)
            bomb.Append($"a{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 9))}]\n");

        Outcome<KnowledgeBase, Problem> outcome = new FixtureKnowledge().With("knowledge.yaml", bomb.ToString()).Load();

        Assert.Equal(
            ["the anchor &a0", "the anchor &a1", "the alias *a0"],
            outcome.Refusals.Select(problem => problem.Found)
        );
    }

    [Theory]
    [InlineData(new byte[] { (byte)'v', (byte)':', (byte)' ', 0xFF }, "1:4: found a byte that is not UTF-8 (0xFF)")]
    [InlineData(new byte[] { (byte)'\n', 0xC3 }, "2:1: found a byte that is not UTF-8 (0xC3)")]
    [InlineData(new byte[] { 0xFF, 0xFE, (byte)'v', 0 }, "1:1: found a byte that is not UTF-8 (0xFF)")]
    [InlineData(new byte[] { 0xED, 0xA0, 0x80 }, "1:1: found a byte that is not UTF-8 (0xED)")]
    [InlineData(new byte[] { 0xC0, 0x80 }, "1:1: found a byte that is not UTF-8 (0xC0)")]
    public void Bytes_that_are_not_utf8_are_refused(byte[] bytes, string expected) =>
        Assert.Contains(
            expected,
            Assert.Single(new FixtureKnowledge().With("knowledge.yaml", bytes).Load().Refusals).ToString(),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_knowledge_file_of_more_than_256_KB_is_refused()
    {
        byte[] large = Padded("crops.yaml", (256 * 1024) + 1);

        Assert.True(new FixtureKnowledge().With("crops.yaml", large[..^1]).Load().IsGood);
        Assert.Equal(
            ["crops.yaml: found a file of more than 256 KB; expected at most 256 KB"],
            new FixtureKnowledge().With("crops.yaml", large).Load().Refusals.Select(problem => problem.ToString())
        );
        Assert.False(new FixtureKnowledge().With("crops.yaml", Padded("crops.yaml", 10_000_000)).Load().IsGood);
    }

    [Fact]
    public void A_folder_of_more_than_8_MB_is_refused()
    {
        var fixture = new FixtureKnowledge();
        for (int i = 0; i < 33; i++)
            fixture.With(
                $"weeds/filler-{i:D2}.yaml",
                Encoding.UTF8.GetBytes("# " + new string('x', 255_000) + "\n[]\n")
            );

        Outcome<KnowledgeBase, Problem> outcome = fixture.Load();

        Assert.Contains(outcome.Refusals, problem => problem.Found == "a folder of more than 8 MB up to here");
    }

    [Fact]
    public void A_file_full_of_mistakes_gives_a_list_that_ends()
    {
        string text = string.Concat(Enumerable.Repeat("- {x: 1}\n", 20_000));

        Outcome<KnowledgeBase, Problem> outcome = new FixtureKnowledge().With("prices.yaml", text).Load();

        Assert.InRange(outcome.Refusals.Length, 500, 520);
        Assert.Contains(outcome.Refusals, problem => problem.Found == "more problems than are listed");
    }

    private static byte[] Padded(string file, int length)
    {
        byte[] bytes = new byte[length];
        Array.Fill(bytes, (byte)'#');
        byte[] content = new FixtureKnowledge()[file];
        content.CopyTo(bytes, 0);
        bytes[content.Length - 1] = (byte)'\n';
        return bytes;
    }
}
