using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Blocks;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Costs;

/// <summary>What holds of the cost of every shipped action, for every block of pots.</summary>
public sealed class CostLawTests
{
    private static readonly string[] s_actions =
    [
        .. ShippedRules.Knowledge.Practices.Keys,
        .. ShippedRules.Knowledge.Treatments.Keys,
    ];

    private static readonly WordSet[] s_tools =
    [
        WordSet.Empty,
        WordSet.Of("pot-dosing-spoon"),
        WordSet.Of("hand-spreader", "backpack-sprayer"),
        WordSet.Of("boom-sprayer", "hand-spreader", "pot-dosing-spoon"),
    ];

    private static readonly Gen<PotBlock> s_block = Gen.Select(
        Gen.Int[1, 200_000],
        Gen.Decimal[6m, 80m],
        Gen.Decimal[0m, 60m],
        (pots, width, gap) => CostOf.Block(pots, width, width + gap)
    );

    private static readonly Gen<(string Action, PotBlock Block, WordSet Tools)> s_case = Gen.Select(
        One(s_actions),
        s_block,
        One(s_tools)
    );

    [Fact]
    public void Its_lines_are_whole_ranges_that_add_up() =>
        s_case.Sample(
            drawn =>
            {
                ActionCost cost = CostOf.Action(drawn.Action, drawn.Block, drawn.Tools);
                Assert.All(cost.Materials.Concat(cost.Work), line =>
                {
                    Assert.InRange(line.Amount.Low, 0, line.Amount.High);
                    Assert.NotEmpty(line.Working);
                });
                Assert.Equal(cost.Materials.Sum(line => line.Amount.Middle), cost.MaterialsUsd.Middle, 12);
                Assert.Equal(
                    cost.Usd(18),
                    cost.Materials.Sum(line => line.Amount.Middle) + (18 * cost.Work.Sum(line => line.Amount.Middle)),
                    9
                );
            },
            iter: Sizes.Of(200, 20_000)
        );

    [Fact]
    public void More_pots_never_cost_less_and_each_pot_never_more() =>
        Gen.Select(s_case, Gen.Int[1, 50_000])
            .Sample(
                drawn =>
                {
                    ((string action, PotBlock block, WordSet tools), int more) = drawn;
                    PotBlock larger = block with { Pots = block.Pots with { Value = block.Pots.Value + more } };
                    ActionCost few = CostOf.Action(action, block, tools);
                    // With one and the same tool: a larger block may be worth another.
                    ActionCost many = CostOf.Action(action, larger, tools, few.Tool);
                    Assert.True(many.MaterialsUsd.Middle >= few.MaterialsUsd.Middle);
                    Assert.True(many.Hours.Middle >= few.Hours.Middle);
                    // A tank that is begun counts whole: its minutes are the only step up.
                    decimal step = few.Tool is ApplicationTools.Backpack or ApplicationTools.Boom ? 20m / 60 : 0;
                    Assert.True(
                        (many.Hours.Middle - step) / many.Site.Units <= few.Hours.Middle / few.Site.Units + 1e-15m
                    );
                },
                iter: Sizes.Of(200, 20_000)
            );

    // The oracle: ground or mix, times the rate, times the price, in numbers of its own.
    [Fact]
    public void The_product_of_one_active_is_ground_times_rate_times_price() =>
        Gen.Select(s_block, One(s_tools))
            .Sample(
                drawn =>
                {
                    (PotBlock block, WordSet tools) = drawn;
                    ActionCost cost = CostOf.Action("prodiamine-granule", block, tools);
                    double width = (double)block.WidthCm.Value,
                        apart = (double)block.ApartCm.Value;
                    double squareCm =
                        cost.Tool == "pot-dosing-spoon" ? Math.PI * (width / 2) * (width / 2) : apart * apart;
                    double acres = block.Pots.Value * squareCm / 10_000 / 4046.8564224;
                    double pounds = acres * (0.75 + 1.5) / 2;
                    double usd =
                        pounds * 0.45359237 * (double)ShippedRules.Knowledge.Prices["prodiamine-in-granules"].Value;
                    Assert.Equal(usd, (double)cost.MaterialsUsd.Middle, usd * 1e-9);
                },
                iter: Sizes.Of(100, 10_000)
            );

    [Fact]
    public void Each_growth_follows_what_it_is_named_after() =>
        Gen.Select(One<Practice>([.. ShippedRules.Knowledge.Practices.Values]), s_block)
            .Sample(
                drawn =>
                {
                    (Practice practice, PotBlock block) = drawn;
                    CostDrivers cost = practice.CostOn("pots")!;
                    double each = cost.GrowsWith switch
                    {
                        CostGrowth.Nothing => 1,
                        CostGrowth.Surface => Math.Pow((double)block.WidthCm.Value / 16, 2) * block.Pots.Value / 1000,
                        CostGrowth.Ground => Math.Pow((double)block.ApartCm.Value / 30, 2) * block.Pots.Value / 1000,
                        _ => block.Pots.Value / 1000.0,
                    };
                    double usual = (double)CostOf.Action(practice.Id, CostOf.Usual).MaterialsUsd.Middle;
                    double here = (double)CostOf.Action(practice.Id, block).MaterialsUsd.Middle;
                    Assert.Equal(usual * each, here, Math.Max(1e-9, usual * each * 1e-9));
                },
                iter: Sizes.Of(200, 20_000)
            );

    private static Gen<T> One<T>(T[] all) => Gen.Int[0, all.Length - 1].Select(at => all[at]);
}
