using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Trade;

/// <summary>
/// How weeds live, and what follows: rounds and days of ripe seed press on seed only; what comes from below is taken
/// out whole; films and mats lose water, feed and still air before they are lifted.
/// </summary>
public class WaysOfLifeTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    // Nutsedge: tubers, not seed (stoller-wax-1973, holt-orcutt). Horsetail: rhizomes (wsu-horsetail). Bindweed and
    // mugwort: roots and rhizomes (thurston-conar, klingeman-2004). Liverwort: gemmae and spores (osu-hort-lw). The
    // rest is common practice.
    [Theory]
    [InlineData("nutsedge-yellow", "below")]
    [InlineData("nutsedge-purple", "below")]
    [InlineData("field-horsetail", "below")]
    [InlineData("bindweed-field", "below")]
    [InlineData("mugwort", "below")]
    [InlineData("quackgrass", "below")]
    [InlineData("bermudagrass", "below")]
    [InlineData("liverwort", "spores")]
    [InlineData("silvery-thread-moss", "spores")]
    [InlineData("algae-crust", "spores")]
    [InlineData("nostoc", "spores")]
    [InlineData("bittercress-hairy", "seed")]
    [InlineData("spurge-spotted", "seed")]
    [InlineData("crabgrass-large", "seed")]
    [InlineData("annual-sedges", "seed")]
    [InlineData("benghal-dayflower", "below, seed")]
    [InlineData("dandelion", "below, seed")]
    [InlineData("canada-thistle", "below, seed")]
    [InlineData("willowherb", "below, seed")]
    [InlineData("unnamed-broadleaf", "seed")]
    [InlineData("unnamed-creeper", "below")]
    [InlineData("unnamed-moss", "spores")]
    [InlineData("unnamed-grass", "")]
    [InlineData("unnamed-vine", "")]
    public void A_weed_lives_by(string weed, string ways) =>
        Assert.Equal(
            ways,
            string.Join(", ", WaysOfLife.Of(s_knowledge.Weeds[weed], s_knowledge.Usual).Order(StringComparer.Ordinal))
        );

    [Theory]
    [InlineData("nutsedge-yellow", "flowering")]
    [InlineData("nutsedge-purple", "mature")]
    [InlineData("bindweed-field", "flowering")]
    [InlineData("mugwort", "flowering")]
    [InlineData("quackgrass", "seeding")]
    [InlineData("field-horsetail", "mature")]
    [InlineData("liverwort", "mature")]
    [InlineData("silvery-thread-moss", "mature")]
    [InlineData("algae-crust", "mature")]
    public void Neither_rounds_nor_pulling_before_seed_is_for_what_does_not_live_by_seed(string weed, string stage)
    {
        AreaAdvice advice = Yard(new WeedSeen(weed, stage, 10));
        Assert.DoesNotContain(advice.Clear, one => one.Action is "hand-weeding-rounds" or "pull-before-seed");
        Assert.DoesNotContain(advice.Findings, one => one.Id == "weeding-comes-too-late" && one.IsCertain);
    }

    [Theory]
    [InlineData("spurge-spotted")]
    [InlineData("dandelion")]
    public void Both_are_for_what_lives_by_seed(string weed)
    {
        AreaAdvice advice = Yard(new WeedSeen(weed, "flowering", 10));
        Assert.Contains(advice.Clear, one => one.Action == "hand-weeding-rounds");
        Assert.Contains(advice.Clear, one => one is { Action: "pull-before-seed", Horizon: Horizon.Today });
    }

    [Theory]
    [InlineData("nutsedge-yellow")]
    [InlineData("mugwort")]
    [InlineData("quackgrass")]
    [InlineData("yellowcress-creeping")]
    public void What_comes_from_below_is_taken_out_whole_and_not_pulled(string weed)
    {
        string[] order = [.. Yard(new WeedSeen(weed, "young", 10)).Clear.Select(one => one.Action)];
        Assert.Contains("dig-out-roots", order);
        Assert.DoesNotContain("hand-weed-now", order);
    }

    // Water, feed and air first, then the mat comes off, then a cover (osu-lw-control, osu-lw-pre).
    [Theory]
    [InlineData("liverwort", "mature")]
    [InlineData("liverwort", "seeding")]
    [InlineData("moss-cord", "mature")]
    public void A_mat_loses_water_feed_and_still_air_before_it_is_lifted_and_covered(string weed, string stage)
    {
        AreaAdvice advice = Advise(
            Worked("green-things-nobody-can-name", "moss") with
            {
                Weeds = [new WeedSeen(weed, stage, 20)],
            }
        );
        string[] order = [.. advice.Clear.Select(one => one.Action)];
        Assert.Equal(
            ["dry-the-surface", "feed-less-nitrogen", "open-up-air", "scrape-off-liverwort", "rice-hull-mulch"],
            order.Where(one =>
                one
                    is "dry-the-surface"
                        or "feed-less-nitrogen"
                        or "open-up-air"
                        or "scrape-off-liverwort"
                        or "rice-hull-mulch"
            )
        );
    }

    private static AreaAdvice Yard(WeedSeen weed) =>
        Advise(
            Worked("one-pot-in-five", "two-stages").With("weeding-interval", 6).With("expected-weeds", "none") with
            {
                Weeds = [weed],
            }
        );

    private static VisitArea Worked(string visit, string area) =>
        ShippedRules.Visit(visit).Areas.Single(one => one.Id == area);

    private static AreaAdvice Advise(VisitArea area) =>
        ShippedRules.On(AreaCase.Alone(new DateOnly(2026, 6, 10), area));
}
