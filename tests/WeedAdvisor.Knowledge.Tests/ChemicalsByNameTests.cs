using WeedAdvisor.World;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>What a name in the store stands for: ISO common names and what growers say with them.</summary>
public sealed class ChemicalsByNameTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    [Theory]
    [InlineData("vinegar", "acetic-acid-spray")]
    [InlineData("Acetic acid 20 percent", "acetic-acid-spray")]
    [InlineData("triclopyr ester", "triclopyr-noncrop")]
    [InlineData("Prodiamine granules", "prodiamine-granule")]
    [InlineData("prodiamine spray", "prodiamine-spray")]
    [InlineData("oxadiazon", "oxadiazon-granule")]
    [InlineData("isoxaben + trifluralin", "isoxaben-trifluralin-granule")]
    [InlineData("trifluralin and isoxaben", "isoxaben-trifluralin-granule")]
    [InlineData("bleach", "hypochlorite-surfaces")]
    public void A_name_means_the_use_that_holds_just_this(string said, string use) =>
        Assert.Equal([use], Meant(said).Uses.Select(one => one.Id));

    [Fact]
    public void An_active_alone_means_every_use_of_it_alone() =>
        Assert.Equal(
            ["glyphosate-empty-house", "glyphosate-outdoor-directed"],
            Meant("Glyphosate").Uses.Select(one => one.Id)
        );

    // One half of a mixture must never answer for the whole.
    [Theory]
    [InlineData("glyphosate + diquat")]
    [InlineData("triclopyr and 2,4-D")]
    [InlineData("glyphosate plus something")]
    [InlineData("some old can")]
    [InlineData("2,4-D")]
    public void What_is_not_held_just_so_means_no_use(string said)
    {
        ChemicalMeant meant = Meant(said);
        Assert.Empty(meant.Uses);
        Assert.Null(meant.Gone);
    }

    [Fact]
    public void What_is_held_in_mixtures_only_says_so()
    {
        ChemicalMeant meant = Meant("sulfentrazone");
        Assert.Empty(meant.Uses);
        Assert.Equal(["sulfentrazone-prodiamine-spray"], meant.Mixed.Select(one => one.Id));
    }

    [Theory]
    [InlineData("DCPA")]
    [InlineData("chlorthal-dimethyl")]
    [InlineData("chlorthal-dimethyl-withdrawn")]
    [InlineData("DCPA granules")]
    [InlineData("old chlorthal-dimethyl 75 WP")]
    public void A_withdrawn_active_is_known_by_all_its_names(string said) =>
        Assert.Equal("chlorthal-dimethyl", Meant(said).Gone?.Name);

    [Fact]
    public void A_slip_is_told_with_the_nearest_name() => Assert.Equal("clopyralid", Meant("clopyralyd").Nearest);

    [Theory]
    [InlineData("")]
    [InlineData(" - ")]
    [InlineData("null")]
    [InlineData("a-name-that-is-much-too-long-for-any-bag-in-any-store-that-there-is-on-earth")]
    public void What_is_no_name_is_none(string text) => Assert.Null(ChemicalWords.Of(text));

    private static ChemicalMeant Meant(string said) => s_knowledge.ChemicalOf(ChemicalWords.Of(said)!);
}
