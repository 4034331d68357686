using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Tests.Weeding;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Money;

public class MoneyCaseTests
{
    private static readonly VisitArea s_yard = Yards.Area("container-yard");

    [Fact]
    public void The_wage_given_goes_before_the_areas_answer_and_that_before_the_price()
    {
        Assert.Equal(25m, Yards.Case(s_yard.With("labour-rate", 21), wage: 25).Value!.WageUsd);
        Assert.Equal(21m, Yards.Case(s_yard.With("labour-rate", 21)).Value!.WageUsd);
        Assert.Equal(
            30m,
            Yards
                .Case(s_yard.Without("labour-rate"), own: [Yards.Price("labour-rate", 30, "usd-per-hour")])
                .Value!.WageUsd
        );
    }

    [Fact]
    public void What_nobody_said_is_assumed_and_marked()
    {
        MoneyCase money = Yards.Case(s_yard.Without("weeding-interval")).Value!;
        Assert.Equal((4, false), (money.IntervalWeeks, money.IsIntervalGiven));
        Assert.Equal((10_000, false), (money.Pots, money.IsPotsGiven));
    }

    [Theory]
    [InlineData(-1, 1000, "Container yard, block 4: An hour of labour costs 0 to 10000 US dollars, not -1.")]
    [InlineData(18, 0, "An area has 1 to 100000000 pots, not 0.")]
    public void Impossible_terms_are_refused(int wage, int pots, string why) =>
        Assert.Equal(why, Assert.Single(Yards.Case(s_yard, wage, pots).Refusals));

    [Theory]
    [InlineData(0, null, null)]
    [InlineData(53, null, null)]
    [InlineData(null, -0.1, null)]
    [InlineData(null, 1.1, null)]
    [InlineData(null, double.NaN, null)]
    [InlineData(null, null, 1.01)]
    public void Impossible_rounds_and_shares_are_refused(int? interval, double? missed, double? control)
    {
        var terms = new YearTerms(null, null)
        {
            IntervalWeeks = interval,
            Missed = missed,
            TodayControl = control,
        };
        Assert.Single(
            MoneyCase
                .Of(
                    Yards.Case(s_yard).Value!.Advice,
                    new DateOnly(2026, 4, 14),
                    ShippedRules.Knowledge,
                    PriceBook.Of(ShippedRules.Knowledge),
                    terms
                )
                .Refusals
        );
    }

    [Fact]
    public void What_is_said_to_be_stopped_takes_the_place_of_the_records_and_of_no_mulch()
    {
        MoneyCase money = Yards.Case(s_yard.With("mulch", "bark")).Value!;
        Way Today(double? control, VisitArea area) =>
            WaysCompared.Of(Yards.Case(area).Value!.In(year => year with { TodayControl = control })).Value!.Today;
        double Pulled(double? control, VisitArea area) => Today(control, area).Season.Pulled;
        Assert.NotEmpty(money.Year.PastYear);
        VisitArea mulched = money.Area;
        Assert.Equal(Pulled(null, mulched with { Past = [] }), Pulled(0, mulched), 6);
        Assert.True(Pulled(0, mulched) < Pulled(0, s_yard));
        Assert.True(Pulled(0.9, mulched) < Pulled(0, mulched));
        Assert.Equal(Today(null, mulched).OutlayUsd, Today(0.9, mulched).OutlayUsd);
    }

    [Fact]
    public void A_practice_on_top_of_todays_way_keeps_what_is_said_to_be_stopped()
    {
        WaysCompared compared = WaysCompared
            .Of(Yards.Case(s_yard).Value!.In(year => year with { TodayControl = 1 }))
            .Value!;
        string practice = compared
            .Case.Advice.Clear.Select(clear => clear.Action)
            .First(id =>
                ShippedRules.Knowledge.Practices.ContainsKey(id)
                && compared.Ways.All(way => way.Plan.Id != id)
                && compared.Find(id).IsGood
            );
        Assert.Equal(compared.Today.Season.Pulled, compared.Find(practice).Value!.Season.Pulled, 9);
        Assert.True(compared.Today.Season.Pulled < compared.Way("hands-6").Season.Pulled);
    }

    [Fact]
    public void The_pots_are_those_set_else_those_answered_else_the_usual_number()
    {
        VisitArea told = s_yard.With("pots", 25_000);
        Assert.Equal((800, true), Pots(Yards.Case(told, pots: 800).Value!));
        Assert.Equal((25_000, true), Pots(Yards.Case(told).Value!));
        Assert.Equal((10_000, false), Pots(Yards.Case(s_yard.Without("pots")).Value!));

        static (int, bool) Pots(MoneyCase money) => (money.Pots, money.IsPotsGiven);
    }

    [Fact]
    public void Broadcast_on_pots_that_touch_takes_the_ground_of_their_own_width()
    {
        // One weed is enough: what goes on is weighed by the ground.
        VisitArea tight = s_yard.With("spacing", "pot-tight").With("expected-weeds", "none") with
        {
            Weeds = s_yard.Weeds!.Value[..1],
        };
        decimal Granule(VisitArea area) =>
            Yards
                .Compare(area)
                .Way("flumioxazin-granule")
                .Items.Single(item => item.Id == "materials-flumioxazin-granule")
                .Usd;
        Assert.Equal(4, Granule(tight.With("pot-width", 20)) / Granule(tight.With("pot-width", 10)), 6);
        Assert.Equal(Granule(tight.With("spacing", "spaced")), Granule(tight.With("pot-width", 30)), 6);
        Assert.Equal(Granule(tight), Granule(tight.With("pot-width", 16)), 6);
    }

    [Fact]
    public void A_missing_wage_is_named()
    {
        var knowledge = ShippedRules.Knowledge with { Prices = ShippedRules.Knowledge.Prices.Remove("labour-rate") };
        Assert.Equal(
            "Container yard, block 4: What an hour of labour costs is not known. Answer the question 'labour-rate', "
                + "put it in a price file, or set it with --wage.",
            Assert.Single(Yards.Case(s_yard.Without("labour-rate"), knowledge: knowledge).Refusals)
        );
    }

    [Fact]
    public void A_missing_price_of_a_tool_leaves_out_the_ways_that_need_it()
    {
        var knowledge = ShippedRules.Knowledge with { Prices = ShippedRules.Knowledge.Prices.Remove("boom-sprayer") };
        var compared = WaysCompared.Of(Yards.Case(s_yard.Expecting(Yard.SixWeeds), knowledge: knowledge).Value!).Value!;
        Assert.DoesNotContain(compared.Ways, way => way.Plan.Parts.Any(part => part.IsByBoom));
        Assert.Contains(compared.Left, left => left.Because == "the price 'boom-sprayer' is missing");
    }

    [Fact]
    public void Without_pots_weeds_region_or_model_there_is_nothing_to_compare()
    {
        Assert.Contains("No pots stand here", Why(Yards.Case(Yards.Area("bark-pile"))));
        Assert.Contains("No weed is noted", Why(Yards.Case(s_yard with { Weeds = null })));
        Assert.Contains("Answer the question 'region'", Why(Yards.Case(s_yard.Without("region"))));
        Assert.Contains(
            "weeding.yaml",
            Why(
                Yards.Case(
                    s_yard,
                    knowledge: ShippedRules.Knowledge with
                    {
                        Weeding = ImmutableSortedDictionary<
                            string,
                            WeedAdvisor.Knowledge.Records.WeedingParameter
                        >.Empty,
                    }
                )
            )
        );
    }

    [Fact]
    public void On_a_clean_area_the_weeds_to_come_count()
    {
        MoneyCase clean = Yards.Case(s_yard with { Weeds = [] }).Value!;
        Assert.Contains(clean.Year.Weeds.Counted, weed => weed.Origin == WeedOrigin.ToCome);
        Assert.All(clean.Year.Weeds.Counted, weed => Assert.Empty(weed.Standing));
    }

    [Fact]
    public void A_weed_that_cannot_be_reckoned_is_left_out_and_named()
    {
        MoneyCase money = Yards.Case(s_yard.Expecting("eclipta", "algae-crust")).Value!;
        Assert.Equal(
            "eclipta",
            Assert.Single(money.Year.Weeds.Counted, weed => weed.Origin == WeedOrigin.Seen).Weed.Id
        );
        Assert.Contains("cannot be pulled", Assert.Single(money.LeftOut));
    }

    private static string Why(Outcome<MoneyCase, string> outcome) => Assert.Single(outcome.Refusals);
}
