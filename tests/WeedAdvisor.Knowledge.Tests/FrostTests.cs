using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Tests.Support;
using WeedAdvisor.World;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>What a weed record says of frost.</summary>
public sealed class FrostTests
{
    private const string File = "weeds/liverwort.yaml";
    private const string Warmth = "  base-temperature-c: 4\n";
    private const string Origin = "    base-temperature-c: book\n";

    [Theory]
    [InlineData("killed", FrostFate.Killed)]
    [InlineData("stands", FrostFate.Stands)]
    [InlineData("not-known", FrostFate.NotKnown)]
    public void Each_word_is_read_with_its_source_and_the_floor_beside_it(string word, FrostFate fate)
    {
        Weed weed = Fixture($"  frost: {word}\n  growth-floor-c: 5\n", "    frost: book\n    growth-floor-c: memory\n")
            .Load()
            .Value!.Weeds["liverwort"];
        Assert.Equal(fate, weed.Frost);
        Assert.Equal(5, weed.GrowthFloorC);
        Assert.Contains("growth-floor-c", weed.Memory);
    }

    [Fact]
    public void What_is_left_out_is_not_known()
    {
        Weed weed = FixtureKnowledge.Good.Weeds["liverwort"];
        Assert.Equal(FrostFate.NotKnown, weed.Frost);
        Assert.Null(weed.GrowthFloorC);
    }

    [Theory]
    [InlineData("  frost: kiled\n", "    frost: book\n", "found 'kiled'", "did you mean 'killed'?")]
    [InlineData("  frost: stands\n", "", "'frost'", "from")]
    [InlineData("  growth-floor-c: warm\n", "    growth-floor-c: book\n", "found 'warm'", "expected a number")]
    [InlineData("  growth-floor-c: 41\n", "    growth-floor-c: book\n", "found 41", "from -20 to 40")]
    public void A_wrong_one_is_one_problem(string line, string origin, string found, string said)
    {
        string problem = Assert.Single(Fixture(line, origin).Load().Refusals).ToString();
        Assert.Contains(found, problem);
        Assert.Contains(said, problem);
    }

    // Extension pages of NC State on annual sedges and on Japanese stiltgrass: both die in the first frost. Washington
    // State on field horsetail: the green stems die in it, the rhizomes do not. The survey of hairy bittercress in the
    // British Isles: seedlings live through hard frost.
    [Theory]
    [InlineData("annual-sedges", FrostFate.Killed, "ncsu-cyperus")]
    [InlineData("stiltgrass", FrostFate.Killed, "ncsu-stilt")]
    [InlineData("field-horsetail", FrostFate.Killed, "wsu-whitman-horsetail")]
    [InlineData("bittercress-hairy", FrostFate.Stands, "bsbi-hirsuta")]
    public void Weeds_of_which_it_is_published_say_so(string id, FrostFate fate, string source)
    {
        Weed weed = ShippedRules.Knowledge.Weeds[id];
        Assert.Equal(fate, weed.Frost);
        Assert.Contains(weed.From.Values, field => field.Field == "frost" && field.Sources.Contains(source));
    }

    // What lives through winter cannot be a weed that the frost kills, and the other way about: common knowledge of
    // the trade, no source.
    [Fact]
    public void No_winter_annual_dies_in_the_first_frost_and_no_summer_annual_stands_it()
    {
        Assert.DoesNotContain(ShippedRules.Knowledge.Weeds.Values, weed =>
            (weed.LifeCycle == "winter-annual" && weed.Frost == FrostFate.Killed)
            || (weed.LifeCycle == "summer-annual" && weed.Frost == FrostFate.Stands)
        );
        Assert.Contains(ShippedRules.Knowledge.Weeds.Values, weed => weed.Frost == FrostFate.Killed);
    }

    private static FixtureKnowledge Fixture(string line, string origin) =>
        new FixtureKnowledge().Change(File, Warmth, Warmth + line).Change(File, Origin, Origin + origin);
}
