using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>Every value of a record says where it comes from, and nothing else is said there.</summary>
public sealed class BadOriginTests
{
    private const string Weed = "weeds/liverwort.yaml";
    private const string Spurge = "weeds/spurge.yaml";
    private const string Treatment = "treatments/oxadine-granules.yaml";

    [Theory]
    [InlineData(
        Weed,
        "    underground: book\n",
        "",
        "weeds/liverwort.yaml:16:3: found no source for 'underground'; expected 'underground' under 'from': a key of "
            + "sources.yaml, 'memory' or 'common-practice', or a list of them"
    )]
    [InlineData(Weed, "  underground: book", "  underground: bok", "found 'bok'; expected a key of sources.yaml")]
    [InlineData(Weed, "  underground: book", "  underground: []", "found an empty list; expected at least one source")]
    [InlineData(Weed, "  underground: book", "  underground:", "found nothing; expected a key of sources.yaml")]
    [InlineData(Weed, "  underground: book", "  underground: [book, book]", "found 'book' a second time")]
    [InlineData(
        Weed,
        "    underground: book",
        "    underground: book\n    colour: book",
        "found a source for 'colour'; expected a value of a weed"
    )]
    [InlineData(
        Weed,
        "    underground: book",
        "    underground: book\n    seed-life-years: book",
        "found a source for 'seed-life-years', which a weed here does not hold; expected a value of a weed"
    )]
    [InlineData(
        Weed,
        "    underground: book",
        "    underground: book\n    name: book",
        "found a source for 'name'; expected a value of a weed"
    )]
    [InlineData(
        Spurge,
        "{ all: book }",
        "{ all: [book, leaflet] }",
        "found 'all' beside other sources; expected 'all'"
    )]
    [InlineData(Spurge, "{ all: book }", "{ all: book, kind: leaflet }", "found 'all' beside other sources")]
    [InlineData(Spurge, "{ all: book }", "book", "found 'book'; expected a source for each value, as a map of keys")]
    [InlineData(Spurge, "from: { all: book }", "places-of: book", "found a weed without 'from'", 2)]
    [InlineData(Spurge, "from: { all: book }", "source: [book]", "found the key 'source'; expected keys of a weed", 2)]
    [InlineData(
        Treatment,
        "{ all: book }",
        "{ all: memory }",
        "found 'edible-ok' from memory, without 'searched'; expected keys of the sources that were looked through"
    )]
    [InlineData(Treatment, "{ all: book }", "{ all: memory }\n  searched: [bok]", "found 'bok'; expected a key of")]
    [InlineData(Treatment, "from: { all: book }", "memory: [status]", "found the key 'memory'", 2)]
    public void Each_is_told_with_its_place(string file, string text, string instead, string told, int count = 1)
    {
        IReadOnlyList<Problem> problems = new FixtureKnowledge().Change(file, text, instead).Load().Refusals;
        Assert.Equal(count, problems.Count);
        Assert.Contains(problems, problem => problem.ToString().Contains(told, StringComparison.Ordinal));
    }

    [Fact]
    public void A_field_that_is_misspelt_there_is_told_with_the_one_that_lacks_a_source()
    {
        IReadOnlyList<Problem> problems = new FixtureKnowledge()
            .Change(Weed, "    underground: book", "    undreground: book")
            .Load()
            .Refusals;
        Assert.Equal(2, problems.Count);
        Assert.Contains("no source for 'underground'", problems[0].ToString(), StringComparison.Ordinal);
        Assert.EndsWith("did you mean 'undreground'?", problems[0].ToString(), StringComparison.Ordinal);
        Assert.EndsWith("did you mean 'underground'?", problems[1].ToString(), StringComparison.Ordinal);
    }
}
