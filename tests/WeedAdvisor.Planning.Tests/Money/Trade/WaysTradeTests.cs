using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Blocks;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Tests.Costs;
using WeedAdvisor.Planning.Tests.Weeding;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Money.Trade;

/// <summary>
/// What the trade holds of the ways. The shipped prices and working hours are invented: where a figure only comes out
/// with them, the check says so.
/// </summary>
public class WaysTradeTests
{
    private const decimal PotsOnAnAcreAFootApart = 43_560;

    private static readonly VisitArea s_yard = (Yards.Area("container-yard") with { Past = [] })
        .Expecting(Yard.SixWeeds)
        .With("surroundings", "mown")
        .With("surface-moisture", "moist")
        .With("weeding-interval", 2);

    private static readonly WaysCompared s_compared = Yards.Compare(s_yard);

    // Common practice: sprayed instead of spread, the same active saves 30 to 50 % of the chemical. Invented prices.
    [Theory]
    [InlineData("prodiamine")]
    [InlineData("isoxaben")]
    [InlineData("dithiopyr")]
    [InlineData("pendimethalin")]
    public void A_spray_saves_thirty_to_fifty_percent_of_the_chemical(string active) =>
        Assert.InRange(1 - (Materials($"{active}-spray") / Materials($"{active}-granule")), 0.30m, 0.50m);

    // Common practice: on a whole nursery, forty acres here, one person with a boom does what takes five or six with
    // hand spreaders. Working times from memory.
    [Fact]
    public void One_person_with_a_boom_does_the_work_of_five_or_six()
    {
        PotBlock nursery = Block(pots: 40 * (int)PotsOnAnAcreAFootApart);
        Assert.InRange(
            One("prodiamine-granule", nursery, ApplicationTools.Spreader).Hours.Middle
                / One("prodiamine-spray", nursery, ApplicationTools.Boom).Hours.Middle,
            5m,
            6m
        );
    }

    // Common practice: mulches save 30 to 50 % of the cost of hand weeding. Six common weeds, a round every two weeks.
    [Theory]
    [InlineData("rice-hull-mulch")]
    [InlineData("wood-chip-mulch")]
    [InlineData("hazelnut-shell-mulch")]
    public void A_mulch_saves_thirty_to_fifty_percent_of_the_weeding(string mulch) =>
        Assert.InRange(1 - (Weeding(s_compared.Way(mulch)) / Weeding(s_compared.Today)), 0.30m, 0.50m);

    // Common practice: a mulch that costs more than a herbicide to put on can cost less over the season.
    [Fact]
    public void A_mulch_that_is_dearer_to_put_on_can_be_cheaper_over_the_season()
    {
        WaysCompared every4 = Yards.Compare(s_yard.With("weeding-interval", 4));
        Way mulch = every4.Way("bark-mulch");
        Way granule = every4.Way("isoxaben-trifluralin-granule");
        Assert.True(PuttingOn(mulch) > 3 * PuttingOn(granule));
        Assert.True(mulch.Usd < granule.Usd);
    }

    // nm-fluid-2011: sprays instead of granules saved 400 dollars an acre. With the shipped, invented, prices the
    // chemical of two or three uses on pots a foot apart (gilliam-1990: three were usual) saves about 340 to 510.
    [Fact]
    public void Sprays_save_about_four_hundred_dollars_an_acre_in_chemical()
    {
        decimal eachUse =
            (Materials("prodiamine-granule") - Materials("prodiamine-spray")) * PotsOnAnAcreAFootApart / 1000;
        Assert.InRange(400m, 2 * eachUse, 3 * eachUse);
    }

    // neal-cost-trial, second-hand: by hand alone 42 cents a pot. Here, labour and bags at the shipped, invented, wage.
    [Fact]
    public void Hands_alone_cost_about_what_a_field_trial_found() =>
        Assert.InRange(
            100 * (s_compared.Today.Usd - s_compared.Today.Of(CostKind.LostReturn)) / 1000,
            42m * 0.75m,
            42m * 1.25m
        );

    // The same trial: with a herbicide as well 17 cents. One active alone does not reach that in the model; every one
    // that is rated good on most of the weeds lies between the two figures.
    [Fact]
    public void A_herbicide_and_hands_lie_between_the_two_figures_of_the_trial()
    {
        Way best = s_compared.Ways.First(way => way.Plan.Parts is [{ Action: Treatment }]);
        Assert.InRange(100 * (best.Usd - best.Of(CostKind.LostReturn)) / 1000, 17m, 42m);
    }

    // walker-williams-1989: the loss did not depend on the number of weeds in a pot; one was enough. So six weeds in
    // every pot hurt hardly more pots than three, and the yearly loss has an upper end.
    [Fact]
    public void More_weeds_in_the_same_pots_take_no_more()
    {
        Assert.Equal(CropLoss.PotsHurt(6_000), CropLoss.PotsHurt(3_000), 0.05 * CropLoss.PotsHurt(6_000));
        Assert.True(CropLoss.PotsHurt(1e9) <= 1000);
    }

    // The materials of one use on 1000 pots a foot apart.
    private static decimal Materials(string action) => One(action, Block(1000)).MaterialsUsd.Middle;

    private static ActionCost One(string action, PotBlock block, string? tool = null) =>
        CostOf.Action(action, block, tool: tool);

    private static PotBlock Block(int pots) => CostOf.Block(pots, widthCm: 16, apartCm: 30.48m);

    private static decimal Weeding(Way way) =>
        way.Items.Where(item => item.Id is "walking" or "pulling" or "weeding-materials").Sum(item => item.Usd);

    private static decimal PuttingOn(Way way) =>
        way
            .Items.Where(item => item.Id.EndsWith(way.Plan.Parts[0].Action.Id, StringComparison.Ordinal))
            .Sum(item => item.Usd);
}
