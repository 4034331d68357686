using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Nursery;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Tests.Season.Programme;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Nursery;

/// <summary>The plan of a whole nursery, held against the plans of its areas.</summary>
public sealed class NurseryPlannerTests
{
    // Where past uses are not told no preventive is planned, and without covers the search is short: laws can be tried
    // on many nurseries.
    private static readonly PlanRequest s_bare = new()
    {
        Without = ["bark-mulch", "hazelnut-shell-mulch", "paper-pellet-mulch", "rice-hull-mulch", "wood-chip-mulch"],
    };

    // With covers there is something to trade: laying them takes a week's hours.
    private static readonly PlanRequest s_covered = new()
    {
        Without = Sizes.IsLong
            ? ["hazelnut-shell-mulch", "paper-pellet-mulch", "wood-chip-mulch"]
            : ["hazelnut-shell-mulch", "paper-pellet-mulch", "rice-hull-mulch", "wood-chip-mulch"],
    };

    private static VisitArea Quick(string id) =>
        ShippedRules.Demo.Areas.Single(area => area.Id == id) with
        {
            Past = null,
        };

    [Fact]
    public void With_all_they_want_the_areas_have_their_own_plans_to_the_cent()
    {
        Visit visit = Of(Years.DemoYard, Quick("mist-house"));
        PlanRequest request = Sizes.IsLong ? new PlanRequest() : s_bare;
        NurseryPlan plan = Planned(visit, request);
        foreach (SharedArea area in plan.Areas)
        {
            AreaPlan alone = Alone(visit, area.Area.Id, request);
            Assert.Equal(Usd(alone), area.Share.Usd);
            Assert.Equal(alone.Best!.Way.Plan.Rounds, area.Plan.Way.Plan.Rounds);
            Assert.Equal(
                alone.Best.Uses.Select(use => (use.Treatment, use.Days)),
                area.Plan.Uses.Select(use => (use.Treatment, use.Days))
            );
            Assert.Equal(0, area.GivenUpUsd);
        }

        Assert.Equal(2, plan.Areas.Length);
        Assert.Equal(plan.Areas.Sum(area => area.Share.Usd), plan.Usd);
        Assert.True(plan.LeastUsd <= plan.Usd);
        Assert.Null(plan.TenMore);
    }

    [Theory]
    [InlineData(null, null)]
    [InlineData(30, null)]
    [InlineData(60, 200)]
    public void A_nursery_of_one_area_is_that_area_to_the_cent(int? hours, int? usd)
    {
        Visit visit = Of(Quick("container-yard"));
        PlanRequest request = s_bare with { HoursPerWeek = hours, BudgetUsd = usd };
        NurseryPlan plan = Planned(visit, request);
        AreaPlan alone = Alone(visit, "container-yard", request);
        Assert.Equal(Usd(alone), plan.Usd);
        Assert.Equal(alone.Best!.Way.Plan.Rounds, Assert.Single(plan.Areas).Plan.Way.Plan.Rounds);
    }

    [Fact]
    public void The_shares_keep_the_hours_and_more_of_them_never_cost_more()
    {
        Visit visit = Of(Quick("container-yard"), Quick("liner-bed"));
        NurseryPlan free = Planned(visit, s_covered);
        decimal least = free.Hours[0].HoursPerWeek;
        Assert.True(least < free.HoursPerWeek);
        decimal before = decimal.MaxValue;
        int steps = Sizes.Of(few: 2, many: 3);
        for (int step = 0; step <= steps; step++)
        {
            decimal hours = least + ((free.HoursPerWeek - least) * step / steps);
            NurseryPlan plan = Planned(visit, s_covered with { HoursPerWeek = hours });
            Assert.True(plan.HoursPerWeek <= hours);
            Assert.True(plan.Usd <= before);
            Assert.True(plan.Usd >= free.Usd);
            Assert.True(plan.LeastUsd <= plan.Usd);
            Assert.All(plan.Areas, area => Assert.True(area.GivenUpUsd >= 0));
            Assert.All(plan.Areas, area =>
                Assert.Equal(
                    area.Share.HoursPerWeek,
                    area.Plan.Way.HoursByWeek().Max() * area.Best.Case.Year.Pots / 1000
                )
            );
            Assert.True(plan.TenMore!.Usd <= plan.Usd);
            before = plan.Usd;
        }

        Assert.Equal(free.Usd, before);
        Assert.Equal(free.Hours[^1].Usd, free.Usd);
        Assert.Equal(free.Hours.Select(row => row.Usd).OrderDescending(), free.Hours.Select(row => row.Usd));
    }

    [Fact]
    public void Areas_stand_in_the_order_of_what_their_first_hours_save()
    {
        NurseryPlan plan = Planned(Of(Quick("mist-house"), Quick("container-yard"), Quick("liner-bed")), s_bare);
        decimal[] worth = [.. plan.Areas.Select(area => area.First.UsdAnHour)];
        Assert.Equal(worth.OrderDescending(), worth);
        Assert.True(worth[0] > 0);
    }

    [Fact]
    public void What_cannot_be_planned_is_told_with_what_to_do_there_and_the_rest_is_planned()
    {
        VisitArea films = Quick("mist-house") with
        {
            Id = "films",
            Answers = Quick("mist-house").Answers.Remove("surroundings"),
            Weeds = [new WeedSeen("algae-crust", "mature", 30)],
        };
        VisitArea nowhere = Quick("liner-bed") with
        {
            Id = "nowhere",
            Answers = Quick("liner-bed").Answers.Remove("region"),
        };
        VisitArea pile = Demo("bark-pile");
        NurseryPlan plan = Planned(Of(Quick("mist-house"), films, nowhere, pile), s_bare);
        Assert.Equal("mist-house", Assert.Single(plan.Areas).Area.Id);
        Assert.Equal(["films", "nowhere", "bark-pile"], plan.Unplanned.Select(one => one.Area.Id));
        Assert.Contains("film", string.Join(' ', plan.Unplanned[0].Why), StringComparison.Ordinal);
        Assert.Contains("region", string.Join(' ', plan.Unplanned[1].Why), StringComparison.Ordinal);
        Assert.Contains("No pots", string.Join(' ', plan.Unplanned[2].Why), StringComparison.Ordinal);
        Assert.All([plan.Unplanned[0], plan.Unplanned[2]], one => Assert.NotEmpty(one.ToDo));
    }

    [Fact]
    public void A_place_with_the_same_weed_is_worth_cleaning_and_two_share_what_it_seeds()
    {
        VisitArea strip = Demo("bark-pile") with { Id = "strip", Weeds = [new WeedSeen("liverwort", "mature", 20)] };
        VisitArea other = Demo("bark-pile") with { Weeds = [new WeedSeen("nutsedge-yellow", "young", 3)] };
        SourceWorth one = Assert.Single(Planned(Of(Quick("mist-house"), strip, other), s_bare).Sources);
        Assert.Equal("strip", one.Place.Id);
        Assert.True(one.Usd > 0);
        NurseryPlan two = Planned(Of(Quick("mist-house"), strip, strip with { Id = "bank" }), s_bare);
        Assert.Equal(2, two.Sources.Length);
        Assert.Equal(two.Sources[0].Usd, two.Sources[1].Usd);
        Assert.True(two.Sources[0].Usd < one.Usd);
    }

    [Fact]
    public void What_makes_no_plan_is_refused_in_one_sentence()
    {
        Visit visit = Of(Quick("mist-house"));
        Assert.Contains("more than 0", Refusal(visit, s_bare with { HoursPerWeek = 0 }), StringComparison.Ordinal);
        Assert.Contains("more than $0", Refusal(visit, s_bare with { BudgetUsd = 0 }), StringComparison.Ordinal);
        Assert.Contains("at least", Refusal(visit, s_bare with { HoursPerWeek = 0.01m }), StringComparison.Ordinal);
        Assert.Contains("No pots", Refusal(Of(Demo("bark-pile")), s_bare), StringComparison.Ordinal);
        Assert.Contains(
            "No area",
            Refusal(Of(Demo("bark-pile"), Demo("under-bench")), s_bare),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Stopped_at_once_no_area_is_planned_and_that_is_said()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        Outcome<NurseryPlan, string> plan = NurseryPlanner.Of(
            ShippedRules.Advisor,
            Of(Quick("mist-house")),
            s_bare,
            stop: stopped.Token
        );
        Assert.Contains("Stopped", Assert.Single(plan.Refusals), StringComparison.Ordinal);
    }

    private static VisitArea Demo(string id) => ShippedRules.Demo.Areas.Single(area => area.Id == id);

    private static Visit Of(params VisitArea[] areas) => ShippedRules.Demo with { Areas = [.. areas] };

    private static decimal Usd(AreaPlan plan) => plan.Best!.Way.Usd * plan.Case.Year.Pots / 1000;

    private static AreaPlan Alone(Visit visit, string id, PlanRequest request)
    {
        int index = visit.Areas.Select(area => area.Id).ToList().IndexOf(id);
        Outcome<PlanCase, string> plan = PlanCase.Of(ShippedRules.Advisor, AreaCase.Of(visit, index), request);
        return PlanSearch.Of(plan.Value!, stop: TestContext.Current.CancellationToken);
    }

    private static NurseryPlan Planned(Visit visit, PlanRequest request)
    {
        Outcome<NurseryPlan, string> plan = NurseryPlanner.Of(
            ShippedRules.Advisor,
            visit,
            request,
            stop: TestContext.Current.CancellationToken
        );
        Assert.True(plan.IsGood, string.Join(' ', plan.Refusals));
        return plan.Value;
    }

    private static string Refusal(Visit visit, PlanRequest request) =>
        Assert.Single(
            NurseryPlanner
                .Of(ShippedRules.Advisor, visit, request, stop: TestContext.Current.CancellationToken)
                .Refusals
        );
}
