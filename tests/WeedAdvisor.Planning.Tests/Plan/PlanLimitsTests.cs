using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Tests.Season.Programme;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Plan;

/// <summary>Plans under a limit of hours or money: they keep it, and what is said of all others is true.</summary>
public sealed class PlanLimitsTests
{
    private const decimal Cent = 0.01m;
    private const int Pots = 10_000;

    private static readonly int?[] s_weeks = Sizes.IsLong ? DrawnYears.Intervals : [4, 6, 8, null];

    // What the plan without limits spends and works lies within these.
    public static TheoryData<decimal?, decimal?> Limits =>
        new()
        {
            { null, 130m },
            { null, 250m },
            { 40m, null },
            { 24m, 150m },
        };

    [Theory]
    [MemberData(nameof(Limits))]
    public void The_plan_keeps_them_and_no_year_that_does_costs_less_than_the_floor(decimal? hours, decimal? budget)
    {
        AreaPlan plan = Planned(Years.DemoYard, hours, budget);
        Assert.NotNull(plan.Best);
        Assert.True(Keeps(plan.Best.Way, hours, budget));
        Assert.True(plan.LeastUsd <= plan.Best.Way.Usd);
        DrawnYears
            .Of(plan.Case, s_weeks)
            .Sample(
                way =>
                    Assert.True(
                        !Keeps(way, hours, budget) || way.Usd >= plan.LeastUsd - Cent,
                        $"{way.Usd} under {plan.LeastUsd}"
                    ),
                iter: Sizes.Of(few: 60, many: 5000),
                threads: 1
            );
    }

    // A plan with less keeps more as well: so what is proven of more can't lie above it, and what is found hardly.
    [Fact]
    public void More_money_or_hours_never_cost_more()
    {
        foreach (bool isMoney in new[] { true, false })
        {
            decimal[] limits = isMoney ? [110, 160, 400] : [24, 60];
            AreaPlan? less = null;
            foreach (decimal limit in limits)
            {
                AreaPlan more = Planned(
                    Years.DemoYard,
                    isMoney ? null : limit,
                    isMoney ? limit : null,
                    FewerRounds.Effort
                );
                if (less?.Best is { } before)
                {
                    Assert.True(more.LeastUsd <= before.Way.Usd + Cent);
                    Assert.True(more.Best!.Way.Usd <= before.Way.Usd * (1 + (more.GapPercent!.Value / 100)) + Cent);
                }

                less = more;
            }

            Assert.NotNull(less!.Best);
        }
    }

    // It would be bought with money that is not there.
    [Fact]
    public void Without_money_for_a_tool_what_needs_it_is_left_out()
    {
        VisitArea area = Years.DemoYard.Taking((QuestionIds.Equipment, new Answer.Words(WordSet.Of("hand-spreader"))));
        AreaPlan plan = Planned(area, null, 150);
        Assert.NotNull(plan.Best);
        Assert.True(Keeps(plan.Best.Way, null, 150));
        Assert.Empty(plan.Best.Way.Tools);
        Assert.NotEmpty(plan.Best.Uses);
    }

    [Fact]
    public void No_money_leaves_no_plan_because_bags_cost_too() => Assert.Null(Planned(Years.DemoYard, null, 0).Best);

    // What stands now takes 18 hours in one go.
    [Fact]
    public void A_lump_of_weeds_is_cleaned_over_as_many_weeks_as_the_hours_ask()
    {
        AreaPlan plan = Planned(Years.DemoYard, 10, null, FewerRounds.Effort);
        Assert.NotNull(plan.Best);
        int weeks = plan.Best.Way.Plan.SpreadWeeks;
        Assert.True(weeks > 1);
        Assert.True(Keeps(plan.Best.Way, 10, null));
        Assert.True(plan.LeastUsd <= plan.Best.Way.Usd);
        Assert.All(plan.Best.Uses, use => Assert.True(use.Week >= weeks - 1));
        Assert.Equal(
            weeks - (plan.Best.Uses.Any(use => use.Week == weeks - 1) ? 1 : 0),
            plan.Best.Work.Count(work => work.Text.Contains($" of {weeks} of the pots", StringComparison.Ordinal))
        );
        Assert.True(plan.Best.Way.Usd >= Planned(Years.DemoYard, 40, null, FewerRounds.Effort).LeastUsd - Cent);
    }

    // The demo yard has a lump of weeds standing; 0 hours are refused before the rules are asked of a whole year.
    [Theory]
    [InlineData(0, null)]
    [InlineData(1, null)]
    [InlineData(null, 5)]
    [InlineData(2, 20)]
    public void Where_there_is_no_plan_what_would_do_does(int? hours, int? budget)
    {
        AreaPlan none = Planned(Years.DemoYard, hours, budget, FewerRounds.Effort);
        Assert.Null(none.Best);
        Assert.Equal((hours is null ? 0 : 1) + (budget is null ? 0 : 1), none.WouldDo.Length);
        foreach (Way would in none.WouldDo)
        {
            AreaPlan some = Planned(
                Years.DemoYard,
                PlanLimits.BusiestWeekHours(none.Case.Year, would),
                PlanLimits.SpentUsd(none.Case.Year, would),
                FewerRounds.Effort
            );
            Assert.NotNull(some.Best);
            Assert.True(some.Best.Way.Usd <= would.Usd + Cent);
        }
    }

    private static bool Keeps(Way way, decimal? hours, decimal? budget)
    {
        decimal spent = way
            .Items.Where(item => item.Kind is CostKind.Material or CostKind.Equipment)
            .Sum(item => item.Usd);
        return (hours is null || way.HoursByWeek().Max() * Pots / 1000 <= hours)
            && (budget is null || spent * Pots / 1000 <= budget + Cent);
    }

    private static AreaPlan Planned(VisitArea area, decimal? hours, decimal? budget, PlanEffort? effort = null) =>
        PlanSearch.Of(
            PlanCase
                .Of(
                    ShippedRules.Advisor,
                    AreaCase.Alone(Years.DemoDay, area),
                    new PlanRequest
                    {
                        HoursPerWeek = hours,
                        BudgetUsd = budget,
                        Pots = Pots,
                    }
                )
                .Value!,
            effort ?? FewerRounds.Of(s_weeks),
            TestContext.Current.CancellationToken
        );
}
