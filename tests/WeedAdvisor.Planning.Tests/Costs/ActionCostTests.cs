using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Prices;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Planning.Blocks;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Costs;

public sealed class ActionCostTests
{
    private const string Granule = "prodiamine-granule";
    private const string Spray = "prodiamine-spray";

    [Fact]
    public void A_small_block_pays_for_the_set_up_of_one_use_like_a_large_one()
    {
        ActionCost small = CostOf.Action(Granule, CostOf.Block(200, 16, 30), tool: ApplicationTools.Spreader);
        ActionCost large = CostOf.Action(Granule, CostOf.Block(20_000, 16, 30), tool: ApplicationTools.Spreader);
        foreach (string step in new[] { "set-up", "clean-up", "records" })
            Assert.Equal(small.Line(step), large.Line(step));
        Assert.Equal(100 * small.Line("application").Amount.Middle, large.Line("application").Amount.Middle, 15);
        Assert.Equal(100 * small.MaterialsUsd.Middle, large.MaterialsUsd.Middle, 15);
        Assert.True(small.Hours.Middle / small.Site.Units > 20 * large.Hours.Middle / large.Site.Units);
    }

    [Fact]
    public void A_spray_has_to_be_mixed_and_a_granule_not()
    {
        Assert.DoesNotContain(CostOf.Action(Granule, CostOf.Usual).Work, line => line.Id == "mixing");
        ActionCost one = CostOf.Action(Spray, CostOf.Usual, tool: ApplicationTools.Backpack);
        ActionCost many = CostOf.Action(Spray, CostOf.Block(40_000, 16, 30), tool: ApplicationTools.Backpack);
        Assert.Equal(15m / 60, one.Line("mixing").Amount.Low, 15);
        Assert.True(many.Line("mixing").Amount.Low > one.Line("mixing").Amount.Low);
    }

    [Fact]
    public void A_spoon_treats_the_mix_and_a_spreader_the_ground()
    {
        PotBlock wide = CostOf.Block(1000, 20, 60);
        ActionCost spoon = CostOf.Action(Granule, wide, tool: ApplicationTools.Spoon);
        ActionCost spreader = CostOf.Action(Granule, wide, tool: ApplicationTools.Spreader);
        Assert.Equal(
            Math.PI / 4 * 20 * 20 / (60 * 60),
            (double)(spoon.MaterialsUsd.Middle / spreader.MaterialsUsd.Middle),
            12
        );
    }

    [Fact]
    public void The_quickest_of_the_tools_that_are_there_is_reckoned_with()
    {
        Assert.Equal(ApplicationTools.Spoon, Tool(Granule, CostOf.Usual, ApplicationTools.Spoon));
        Assert.Equal(
            ApplicationTools.Spreader,
            Tool(Granule, CostOf.Usual, ApplicationTools.Spoon, ApplicationTools.Spreader)
        );
        Assert.Equal(
            ApplicationTools.Boom,
            Tool(Spray, CostOf.Block(40_000, 16, 30), ApplicationTools.Backpack, ApplicationTools.Boom)
        );
        Assert.Equal(ApplicationTools.Backpack, Tool(Spray, CostOf.Usual));
        Assert.Equal(ApplicationTools.Spreader, Tool(Granule, CostOf.Usual));
    }

    // It has to be kept off the leaves.
    [Fact]
    public void What_is_sprayed_below_the_leaves_is_not_reckoned_with_a_boom() =>
        Assert.Equal(
            ApplicationTools.Backpack,
            Tool("s-metolachlor-spray", CostOf.Block(40_000, 16, 30), ApplicationTools.Boom)
        );

    [Fact]
    public void Mulch_is_surface_times_depth_times_price_and_larger_pots_take_longer()
    {
        ActionCost usual = CostOf.Action("bark-mulch", CostOf.Usual);
        ActionCost large = CostOf.Action("bark-mulch", CostOf.Block(1000, 32, 60));
        Assert.Equal(4 * usual.MaterialsUsd.Middle, large.MaterialsUsd.Middle, 15);
        Assert.True(large.Hours.Middle > 2 * usual.Hours.Middle);
        Assert.True(large.Hours.Middle < 4 * usual.Hours.Middle);
    }

    [Fact]
    public void A_strip_or_a_leak_costs_the_same_however_many_pots_stand_there()
    {
        foreach (string action in new[] { "clear-noncrop-strips", "fix-leaks-and-heads", "clean-boots-and-tools" })
        {
            ActionCost few = CostOf.Action(action, CostOf.Usual);
            ActionCost many = CostOf.Action(action, CostOf.Block(90_000, 40, 90));
            Assert.Equal(few.MaterialsUsd, many.MaterialsUsd);
            Assert.Equal(few.Hours, many.Hours);
        }
    }

    [Fact]
    public void The_figures_of_a_record_hold_for_1000_usual_pots()
    {
        foreach (var practice in ShippedRules.Knowledge.Practices.Values)
        {
            if (practice.CostOn("pots") is not { } cost)
                continue;
            ActionCost one = CostOf.Action(practice.Id, CostOf.Usual);
            if (cost.MaterialsUsd is { } usd)
                Assert.Equal(usd.Middle, one.MaterialsUsd.Middle, 9);
            if (cost.LabourHours is { } hours)
                Assert.Equal(hours.Middle, one.Hours.Middle, 9);
        }
    }

    [Fact]
    public void Ones_own_prices_take_the_place_of_the_invented_ones()
    {
        PriceBook kilogram = Book(CostOf.Own("prodiamine-in-granules", 420, ProductPrices.Unit));
        PriceBook whole = Book(CostOf.Own(Granule, 7, PriceFile.UnitOfAction));
        PotBlock block = CostOf.Block(3000, 16, 30);
        decimal shipped = CostOf.Action(Granule, block).MaterialsUsd.Middle;
        Assert.Equal(shipped / 2, CostOf.Action(Granule, block, prices: kilogram).MaterialsUsd.Middle, 12);
        Assert.Equal(21, CostOf.Action(Granule, block, prices: whole).MaterialsUsd.Middle);
        Assert.Contains("your price", CostOf.Action(Granule, block, prices: kilogram).Materials[0].Working);
    }

    [Fact]
    public void The_smallest_pack_costs_what_its_active_costs()
    {
        // 20 kg of granules with 0.5 % hold 0.1 kg of active, at the invented $840.
        ActionCost cost = CostOf.Action(Granule, CostOf.Usual);
        Assert.Equal(new SmallestPack("20 kg", 84), cost.Pack);
        // A litre with 4 lb to the gallon holds 0.4793 kg, at the invented $110.
        Assert.Equal(52.72m, CostOf.Action("oryzalin-spray", CostOf.Usual).Pack!.Usd, 2);
    }

    [Fact]
    public void A_price_that_is_missing_is_named()
    {
        KnowledgeBase without = ShippedRules.Knowledge with
        {
            Prices = ShippedRules.Knowledge.Prices.Remove("prodiamine-in-granules"),
        };
        Assert.Equal(
            "the price 'prodiamine-in-granules' is missing",
            Assert.Single(CostOf.Try(Granule, CostOf.Usual, prices: PriceBook.Of(without)).Refusals)
        );
    }

    [Fact]
    public void Every_shipped_action_has_a_cost_on_pots_and_every_chemical_on_ground_without()
    {
        foreach (string action in ShippedRules.Knowledge.Practices.Keys.Concat(ShippedRules.Knowledge.Treatments.Keys))
            Assert.Empty(CostOf.Try(action, CostOf.Usual).Refusals);
        foreach (string treatment in ShippedRules.Knowledge.Treatments.Keys)
            Assert.Empty(CostOf.Try(treatment, null, ground: "floor").Refusals);
    }

    private static string? Tool(string action, PotBlock block, params string[] there) =>
        CostOf.Action(action, block, WordSet.Of(there)).Tool;

    private static PriceBook Book(Knowledge.Records.Price price) => PriceBook.Of(ShippedRules.Knowledge, [price]);
}
