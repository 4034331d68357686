using CsCheck;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Tests.Weeding;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Money;

public class WaysComparedTests
{
    private static readonly VisitArea s_yard = Yards.Area("container-yard");
    private static readonly WaysCompared s_compared = Yards.Compare(s_yard);

    [Fact]
    public void The_cheapest_stands_first_and_today_is_among_them()
    {
        Assert.Equal(s_compared.Ways.OrderBy(way => way.Usd), s_compared.Ways);
        Assert.Contains(s_compared.Today, s_compared.Ways);
        Assert.Equal(s_compared.Ways.Length, s_compared.Ways.Select(way => way.Plan.Id).Distinct().Count());
    }

    [Fact]
    public void There_are_hands_a_mulch_granules_and_a_spray_to_choose_from_and_feed_waits_for_the_next_potting()
    {
        string[] ids = [.. s_compared.Ways.Select(way => way.Plan.Id)];
        Assert.Contains("hands-6", ids);
        Assert.Contains(ids, id => id.StartsWith("hands-", StringComparison.Ordinal) && id != "hands-6");
        Assert.Contains("bark-mulch", ids);
        Assert.Contains(ids, id => id.StartsWith("bark-mulch-every-", StringComparison.Ordinal));
        Assert.Contains("flumioxazin-granule", ids);
        Assert.Contains("s-metolachlor-spray", ids);
        Assert.DoesNotContain("feed-below-surface", ids);
    }

    [Fact]
    public void The_best_cover_goes_with_the_best_granules_and_the_best_spray()
    {
        Way[] both = [.. s_compared.Ways.Where(way => way != s_compared.Today && way.Plan.Parts.Length == 2)];
        Assert.Equal(2, both.Length);
        Assert.All(both, way =>
        {
            Assert.Equal("bark-mulch", way.Plan.Parts[0].Action.Id);
            Assert.All(way.Plan.Parts, part =>
                Assert.Contains(s_compared.Case.Advice.Clear, clear => clear.Action == part.Action.Id)
            );

            // At the same rounds either alone leaves more to pull.
            WaysCompared same = WaysCompared
                .Of(
                    s_compared.Case.In(year =>
                        year with
                        {
                            Interval = new Told<int>(way.Plan.IntervalWeeks, Origin.Set),
                        }
                    )
                )
                .Value!;
            Assert.All(way.Plan.Parts, part => Assert.True(way.Season.Pulled < same.Way(part.Action.Id).Season.Pulled));
        });
        Assert.Equal(
            ["flumioxazin-granule", "s-metolachlor-spray"],
            both.Select(way => way.Plan.Parts[1].Action.Id).Order()
        );
    }

    [Fact]
    public void Without_a_clear_cover_nothing_is_put_together()
    {
        MoneyCase money = s_compared.Case;
        var bare = money with
        {
            Advice = money.Advice with
            {
                Clear =
                [
                    .. money.Advice.Clear.Where(clear =>
                        money.Knowledge.ActionOf(clear.Action) is not Knowledge.Records.Practice { Kind: "covering" }
                    ),
                ],
            },
        };
        Assert.DoesNotContain(WaysCompared.Of(bare).Value!.Ways, way =>
            way.Plan.Id != WayPlan.Today && way.Plan.Parts.Length > 1
        );
    }

    [Fact]
    public void Today_counts_what_went_on_in_the_year_before()
    {
        Assert.Equal(
            ["isoxaben-trifluralin-granule", "prodiamine-granule"],
            s_compared.Today.Plan.Parts.Select(part => part.Action.Id).Order()
        );
        VisitArea longAgo = s_yard with
        {
            Past =
            [
                new PastApplication(
                    "prodiamine-granule",
                    new DateOnly(2024, 4, 1),
                    null,
                    s_yard.Past!.Value[0].Escaped
                ),
            ],
        };
        Assert.Empty(Yards.Compare(longAgo).Today.Plan.Parts);
    }

    [Fact]
    public void Todays_mulch_costs_and_holds_weeds_back()
    {
        WaysCompared mulched = Yards.Compare((s_yard with { Past = [] }).With("mulch", "bark"));
        Assert.Equal("bark-mulch", Assert.Single(mulched.Today.Plan.Parts).Action.Id);
        Assert.True(mulched.Today.Hours < mulched.Way("hands-6").Hours);
    }

    [Fact]
    public void Every_way_against_today_is_the_way_back_turned_round() => Assert.All(s_compared.Ways, way =>
        {
            PartialBudget there = PartialBudget.Between(s_compared.Today.Items, way.Items);
            Assert.Equal(there.NetChangeUsd, -PartialBudget.Between(way.Items, s_compared.Today.Items).NetChangeUsd, 9);
            Assert.Equal(s_compared.Today.Usd - way.Usd, there.NetChangeUsd, 9);
        });

    [Fact]
    public void No_way_gets_cheaper_when_the_wage_rises() =>
        Gen.Int[0, 60]
            .Sample(
                wage =>
                {
                    var ways = At(wage).Ways.ToDictionary(way => way.Plan.Id);
                    (Way Cheap, Way Dear)[] pairs =
                    [
                        .. At(wage + 1)
                            .Ways.Where(way => ways.ContainsKey(way.Plan.Id))
                            .Select(way => (ways[way.Plan.Id], way)),
                    ];
                    Assert.NotEmpty(pairs);
                    Assert.All(pairs, pair => Assert.True(pair.Dear.Usd > pair.Cheap.Usd));
                },
                iter: 8
            );

    [Fact]
    public void At_the_break_even_wage_both_cost_the_same()
    {
        int found = 0;
        // Rounds of two weeks, so that there are ways both cheaper and dearer in work.
        MoneyCase often = s_compared.Case.In(year => year with { Interval = new Told<int>(2, Origin.Set) });
        WaysCompared twoWeeks = WaysCompared.Of(often).Value!;
        foreach (Way way in twoWeeks.Ways)
        {
            if (WayAgainst.Of(twoWeeks, way).Wage is not BreakEven.At { Value: < Wage.Highest } at)
                continue;
            found++;
            WaysCompared compared = WaysCompared
                .Of(often.In(year => year with { Wage = new Told<decimal>(at.Value, Origin.Set) }))
                .Value!;
            // Another wage may have another best interval; what is left of the ways is held against today's.
            if (compared.Ways.FirstOrDefault(one => one.Plan.Id == way.Plan.Id) is { } same)
                Assert.Equal(compared.Today.Usd, same.Usd, 6);
        }

        Assert.NotEqual(0, found);
    }

    [Fact]
    public void At_base_the_swings_stand_at_the_net_change() => Assert.All(s_compared.Ways, way =>
        {
            WayAgainst against = WayAgainst.Of(s_compared, way);
            Assert.Equal(against.Budget.NetChangeUsd, against.Sensitivity.Base, 9);
            Assert.Equal(against.Sensitivity.Swings.OrderByDescending(swing => swing.Size), against.Sensitivity.Swings);
        });

    [Fact]
    public void A_tool_that_is_there_costs_nothing_and_one_that_is_bought_is_shared_by_the_pots()
    {
        VisitArea area = s_yard.Expecting(Yard.SixWeeds);
        Way bought = Yards.Compare(area).Ways.Single(way => way.Plan.Parts.Any(part => part.IsByBoom));
        Way shared = Yards.Compare(area, pots: 20_000).Way(bought.Plan.Id);
        Assert.Equal(bought.Of(CostKind.Equipment) / 2, shared.Of(CostKind.Equipment), 9);
        Assert.Equal(4_800m, bought.OutlayUsd);
        WaysCompared owned = Yards.Compare(
            area.With("equipment", "boom-sprayer", "backpack-sprayer", "hand-spreader", "pot-dosing-spoon")
        );
        Assert.Equal(0, owned.Way(bought.Plan.Id).OutlayUsd);
        Assert.Equal(0, owned.Way(bought.Plan.Id).Of(CostKind.Equipment));
    }

    // S-metolachlor has to be kept off the leaves.
    [Fact]
    public void What_is_only_sprayed_below_the_leaves_is_not_put_on_with_a_boom()
    {
        Assert.Contains(s_compared.Ways, way => way.Plan.Id == "s-metolachlor-spray");
        Assert.DoesNotContain(s_compared.Ways, way => way.Plan.Parts.Any(part => part.IsByBoom));
    }

    [Fact]
    public void Own_prices_move_what_follows_them()
    {
        decimal shipped = s_compared.Way("bark-mulch").Items.Single(item => item.Id == "materials-bark-mulch").Usd;
        WaysCompared dearer = Yards.Compare(s_yard, own: [Yards.Price("pine-bark-mini-nuggets", 120, "usd-per-m3")]);
        Assert.Equal(
            2 * shipped,
            dearer.Way("bark-mulch").Items.Single(item => item.Id == "materials-bark-mulch").Usd,
            9
        );
        WaysCompared named = Yards.Compare(s_yard, own: [Yards.Price("bark-mulch", 11, "usd-per-1000-pots")]);
        Assert.Equal(11m, named.Way("bark-mulch").Items.Single(item => item.Id == "materials-bark-mulch").Usd);
    }

    [Fact]
    public void Pots_that_touch_take_less_of_what_is_broadcast_and_as_much_mulch()
    {
        WaysCompared spaced = Yards.Compare(s_yard.With("spacing", "spaced"));
        decimal Materials(WaysCompared compared, string action) =>
            compared.Way(action).Items.Single(item => item.Id == $"materials-{action}").Usd;
        Assert.Equal(
            (double)Materials(s_compared, "flumioxazin-granule") / (double)Materials(spaced, "flumioxazin-granule"),
            (1 - BroadcastLoss.Square(16, 30)) / (1 - BroadcastLoss.Square(16, 16)),
            9
        );
        Assert.Equal(Materials(spaced, "bark-mulch"), Materials(s_compared, "bark-mulch"));
    }

    [Fact]
    public void The_best_interval_is_no_dearer_than_todays() =>
        Assert.All(s_compared.Ways.Where(way => way.Plan.Id.Contains("-every-", StringComparison.Ordinal)), way =>
            Assert.True(way.Usd <= s_compared.Way(way.Plan.Parts[0].Action.Id).Usd)
        );

    [Fact]
    public void A_practice_that_is_clear_can_be_set_on_top_of_todays_way()
    {
        Way way = s_compared.Find("scout-and-record").Value!;
        Assert.True(way.Usd > s_compared.Today.Usd);
        Assert.All(PartialBudget.Between(s_compared.Today.Items, way.Items).AddedCosts, line =>
            Assert.StartsWith("Walk, look and write down", line.Name)
        );
    }

    [Theory]
    [InlineData("no-such-way", "there is no way 'no-such-way'")]
    [InlineData("prodiamine-spray-by-boom", "there is no way 'prodiamine-spray-by-boom'")]
    [InlineData("glyphosate-empty-house", "'glyphosate-empty-house' must not be used here")]
    public void What_cannot_be_taken_is_refused_with_its_reason(string id, string why) =>
        Assert.Equal($"Container yard, block 4: {why}.", Assert.Single(s_compared.Find(id).Refusals));

    private static WaysCompared At(decimal wage) =>
        WaysCompared.Of(s_compared.Case.In(year => year with { Wage = new Told<decimal>(wage, Origin.Set) })).Value!;
}
