using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Tests.Season.Programme;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Plan;

/// <summary>Laws that hold of every plan, however good the search is.</summary>
public sealed class PlanLawTests
{
    private const decimal Cent = 0.01m;
    private const double Closed = 0.5;

    // With c + h w the price of a plan at a wage w, h with the hours that it leaves for next year: each of two plans is
    // no dearer at its own wage than the other there, but for its gap. So (h2 - h1)(w2 - w1) is at most both gaps.
    [Fact]
    public void When_only_the_wage_rises_the_hours_rise_by_no_more_than_the_gaps_allow()
    {
        decimal[] wages = [9, 18, 30];
        AreaPlan[] plans = [.. wages.Select(At)];
        for (int i = 1; i < wages.Length; i++)
        {
            decimal gaps =
                plans[i - 1].Best!.Way.Usd - plans[i - 1].LeastUsd + plans[i].Best!.Way.Usd - plans[i].LeastUsd;
            decimal more = Hours(plans[i]) - Hours(plans[i - 1]);
            Assert.True(more * (wages[i] - wages[i - 1]) <= gaps + Cent, $"{more} h more, gaps {gaps}");
        }
    }

    // A product less is a plan less to choose from.
    [Fact]
    public void A_product_taken_away_never_makes_a_plan_cheaper_than_is_proven()
    {
        AreaPlan plan = Planned(new PlanRequest());
        foreach (string used in plan.Best!.Uses.Select(use => use.Treatment).Distinct())
            Assert.True(Planned(new PlanRequest { Without = [used] }).Best!.Way.Usd >= plan.LeastUsd - Cent);
    }

    // Prices as they ship. A weed closes pots when its plants cover half of the surface or more.
    [Fact]
    public void Neglect_is_the_cheapest_in_no_worked_area_in_which_weeds_close_the_pots()
    {
        int looked = 0;
        foreach (
            (DateOnly date, AreaAdvice area) in ShippedRules.WorkedAdvice.SelectMany(visit =>
                visit.Areas.Select(area => (visit.Visit.Date, area))
            )
        )
        {
            Outcome<MoneyCase, string> money = MoneyCase.Of(
                area,
                date,
                ShippedRules.Knowledge,
                PriceBook.Of(ShippedRules.Knowledge),
                new YearTerms()
            );
            if (!money.IsGood || Weeded(money.Value.Year, null) is not { } neglect)
                continue;
            if (neglect.Season.Course.Open.Min() > Closed)
                continue;
            looked++;
            decimal weeded = IntervalComparison.UsualIntervals.Min(weeks => Weeded(money.Value.Year, weeks)!.Usd);
            Assert.True(weeded < neglect.Usd, $"{area.Area.Name}: {weeded} weeded, {neglect.Usd} not");
        }

        Assert.True(looked > 50, $"only {looked} areas");
    }

    // Nobody licensed is no cheaper than somebody, and every use is then somebody's visit.
    [Fact]
    public void Where_nobody_is_licensed_each_use_is_a_visit_that_is_paid()
    {
        VisitArea area = Years.DemoYard.Taking((QuestionIds.Licensed, new Answer.Words(WordSet.Of("no"))));
        AreaPlan plan = Planned(new PlanRequest(), area);
        Way way = plan.Best!.Way;
        decimal visit = PriceBook.Of(ShippedRules.Knowledge).Find("licensed-applicator")!.Value;
        Assert.Equal(plan.Best.Uses.Length * visit * 1000 / plan.Case.Year.Pots, way.CalledInUsd, 6);
        Assert.Empty(way.Tools);
        Assert.True(way.Usd >= Planned(new PlanRequest()).LeastUsd - Cent);
    }

    private static Way? Weeded(YearCase year, int? weeks) =>
        WayCosting
            .Of(year, new WayPlan("drawn", "Drawn", weeks ?? 52, []) { Rounds = new YearRounds(weeks, weeks, weeks) })
            .Value;

    private static decimal Hours(AreaPlan plan) => CostAtWage.Of(plan.Best!.Way.Items).Hours;

    private static AreaPlan At(decimal wage) => Planned(new PlanRequest { WageUsdPerHour = wage });

    private static AreaPlan Planned(PlanRequest request, VisitArea? area = null) =>
        PlanSearch.Of(
            PlanCase.Of(ShippedRules.Advisor, AreaCase.Alone(Years.DemoDay, area ?? Years.DemoYard), request).Value!,
            FewerRounds.Effort,
            TestContext.Current.CancellationToken
        );
}
