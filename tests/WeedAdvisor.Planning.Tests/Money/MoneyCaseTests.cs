using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.Tests.Weeding;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Tests.Money;

public class MoneyCaseTests
{
    private static readonly VisitArea s_yard = Yards.Area("container-yard");

    [Fact]
    public void The_wage_given_goes_before_the_areas_answer_and_that_before_the_price()
    {
        Assert.Equal(25m, Yards.Case(s_yard.With("labour-rate", 21), wage: 25).Value!.WageUsd);
        Assert.Equal(21m, Yards.Case(s_yard.With("labour-rate", 21)).Value!.WageUsd);
        Assert.Equal(30m, Yards.Case(s_yard.Without("labour-rate"), own: [Yards.Price("labour-rate", 30, "usd-per-hour")]).Value!.WageUsd);
    }

    [Fact]
    public void What_nobody_said_is_assumed_and_marked()
    {
        MoneyCase money = Yards.Case(s_yard.Without("weeding-interval")).Value!;
        Assert.Equal((MoneyCase.UsualInterval, false), (money.IntervalWeeks, money.IsIntervalGiven));
        Assert.Equal((MoneyCase.UsualPots, false), (money.Pots, money.IsPotsGiven));
    }

    [Theory]
    [InlineData(-1, 1000, "A wage is 0 to 10000 US dollars an hour, not -1.")]
    [InlineData(18, 0, "An area has 1 to 100000000 pots, not 0.")]
    public void Impossible_terms_are_refused(int wage, int pots, string why) =>
        Assert.Equal(why, Assert.Single(Yards.Case(s_yard, wage, pots).Refusals));

    [Fact]
    public void A_missing_wage_is_named()
    {
        var knowledge = Yards.Knowledge with { Prices = Yards.Knowledge.Prices.Remove("labour-rate") };
        Assert.Equal(
            "Container yard, block 4: the price 'labour-rate' is missing. Give it in a price file, or use --wage.",
            Assert.Single(Yards.Case(s_yard.Without("labour-rate"), knowledge: knowledge).Refusals));
    }

    [Fact]
    public void A_missing_price_of_a_tool_leaves_out_the_ways_that_need_it()
    {
        var knowledge = Yards.Knowledge with { Prices = Yards.Knowledge.Prices.Remove("boom-sprayer") };
        var compared = WaysCompared.Of(Yards.Case(s_yard.Expecting(Yard.SixWeeds), knowledge: knowledge).Value!).Value!;
        Assert.DoesNotContain(compared.Ways, way => way.Plan.Parts.Any(part => part.IsByBoom));
        Assert.Contains(compared.Left, left => left.Because == "the price 'boom-sprayer' is missing");
    }

    [Fact]
    public void Without_pots_weeds_region_or_model_there_is_nothing_to_compare()
    {
        Assert.Contains("no pots stand here", Why(Yards.Case(Yards.Area("bark-pile"))));
        Assert.Contains("no weed is named", Why(Yards.Case(s_yard with { Weeds = [] })));
        Assert.Contains("no weed is named", Why(Yards.Case(s_yard with { Weeds = null })));
        Assert.Contains("Answer 'region'", Why(Yards.Case(s_yard.Without("region"))));
        Assert.Contains("weeding.yaml", Why(Yards.Case(s_yard, knowledge: Yards.Knowledge with
        {
            Weeding = ImmutableSortedDictionary<string, WeedAdvisor.Knowledge.Records.WeedingParameter>.Empty,
        })));
    }

    [Fact]
    public void A_weed_that_cannot_be_reckoned_is_left_out_and_named()
    {
        MoneyCase money = Yards.Case(s_yard.Expecting("eclipta", "algae-crust")).Value!;
        Assert.Equal("eclipta", Assert.Single(money.Weeds).Weed);
        Assert.Contains("cannot be pulled", Assert.Single(money.LeftOut));
    }

    private static string Why(WeedingOutcome<MoneyCase> outcome) => Assert.Single(outcome.Refusals);
}
