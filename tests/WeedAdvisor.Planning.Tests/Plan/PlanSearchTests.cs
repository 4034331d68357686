using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Tests.Season.Programme;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Plan;

/// <summary>The plan of a whole year, held against ways that it did not choose.</summary>
public sealed class PlanSearchTests
{
    // Preventives cannot be planned where nothing is said of earlier uses. The short run counts one weed, which makes
    // each choice cheaper to price.
    private static readonly VisitArea s_unplannable = Sizes.IsLong
        ? Years.DemoYard with
        {
            Past = null,
        }
        : Years.DemoYard.With("expected-weeds", "none") with
        {
            Past = null,
            Weeds = Years.DemoYard.Weeds!.Value[..1],
        };

    private static readonly AreaPlan s_demo = Planned(Years.DemoYard, new PlanRequest());

    [Fact]
    public void The_plan_of_the_demo_yard_is_proven_and_cheaper_than_today_and_than_hands_alone()
    {
        Assert.True(s_demo.IsProven, $"gap {s_demo.GapPercent} %");
        Assert.True(s_demo.LeastUsd <= s_demo.Best!.Way.Usd);
        Assert.True(s_demo.Best.Way.Usd < s_demo.Today.Usd);
        Assert.True(s_demo.Best.Way.Usd < s_demo.HandsAlone!.Usd);
        Assert.Equal(
            s_demo.Best.Uses.Select(use => (use.Treatment, use.Week)),
            s_demo
                .Best.Way.Plan.Parts.SelectMany(part => part.Weeks.Select(week => (part.Action.Id, week)))
                .OrderBy(use => use.week)
        );
    }

    [Fact]
    public void No_year_that_keeps_the_distances_costs_less_than_the_floor() =>
        DrawnYears
            .Of(s_demo.Case)
            .Sample(
                way => Assert.True(way.Usd >= s_demo.LeastUsd - 0.01m, $"{way.Usd} under {s_demo.LeastUsd}"),
                iter: Sizes.Of(few: 60, many: 20_000),
                threads: 1
            );

    // The oracle goes through all rounds and measures itself.
    [Fact]
    public void Where_preventives_cannot_be_planned_the_plan_is_the_best_of_all_rounds_and_measures()
    {
        AreaPlan plan = Planned(s_unplannable, new PlanRequest());
        Assert.NotEmpty(plan.Case.NoSeason);
        decimal least = (
            from spring in DrawnYears.Intervals
            from summer in DrawnYears.Intervals
            from cool in DrawnYears.Intervals
            from measure in plan.Case.Measures.Cast<Knowledge.Records.Practice?>().Prepend(null)
            select WayCosting
                .Of(
                    plan.Case.Year,
                    new WayPlan("drawn", "Drawn", 4, measure is null ? [] : [new WayPart(measure, [])])
                    {
                        Rounds = new YearRounds(spring, summer, cool),
                    }
                )
                .Value!.Usd
        ).Min();
        Assert.Equal(least, plan.Best!.Way.Usd, 6);
        Assert.Equal(least, plan.LeastUsd, 6);
        Assert.True(plan.IsProven);
    }

    [Fact]
    public void Fewer_hours_a_week_never_cost_less_and_are_kept()
    {
        decimal before = decimal.MaxValue;
        foreach (decimal hours in new[] { 8m, 20m, 60m })
        {
            AreaPlan plan = Planned(s_unplannable, new PlanRequest { HoursPerWeek = hours, Pots = 10_000 });
            if (plan.Best is not { } best)
                continue;
            Assert.True(best.Way.Usd <= before);
            Assert.All(best.Way.Season.Rounds, round => Assert.True(round.Hours * 10 <= (double)hours + 1e-6));
            before = best.Way.Usd;
        }

        Assert.True(before < decimal.MaxValue);
    }

    [Fact]
    public void What_must_stay_out_stays_out_and_costs_no_less()
    {
        string used = s_demo.Best!.Uses[0].Treatment;
        AreaPlan without = Planned(Years.DemoYard, new PlanRequest { Without = [used] }, FewerRounds.Effort);
        Assert.DoesNotContain(without.Best!.Uses, use => use.Treatment == used);
        Assert.True(without.Best.Way.Usd >= s_demo.LeastUsd);
    }

    [Fact]
    public void What_must_be_in_is_in()
    {
        string cover = s_demo.LeftOut[0].Action;
        AreaPlan with = Planned(Years.DemoYard, new PlanRequest { With = [cover] }, FewerRounds.Effort);
        Assert.Contains(with.Best!.Choice.Measures, measure => measure.Id == cover);
        Assert.DoesNotContain(with.Best.Work, work => work.Action is { } id && id != cover && IsCover(id));
    }

    [Fact]
    public void What_is_left_out_would_cost_more_than_it_saves() =>
        Assert.All(s_demo.LeftOut, left => Assert.True(left.CostsUsd > left.SavesUsd));

    [Theory]
    [InlineData("no-such-thing", "There is no action 'no-such-thing'.")]
    [InlineData("glyphosate-empty-house", "'glyphosate-empty-house' must be in the plan")]
    public void What_cannot_be_in_is_refused(string id, string why) =>
        Assert.Contains(
            why,
            Assert.Single(Case(Years.DemoYard, new PlanRequest { With = [id] }).Refusals),
            StringComparison.Ordinal
        );

    [Fact]
    public void Wishes_that_cannot_be_are_refused()
    {
        Assert.NotEmpty(Case(Years.DemoYard, new PlanRequest { HoursPerWeek = -1 }).Refusals);
        Assert.NotEmpty(Case(Years.DemoYard, new PlanRequest { BudgetUsd = -1 }).Refusals);
        Assert.NotEmpty(Case(Years.DemoYard, new PlanRequest { Pots = 0 }).Refusals);
        Assert.NotEmpty(
            Case(Years.DemoYard, new PlanRequest { With = ["bark-mulch"], Without = ["bark-mulch"] }).Refusals
        );
        Assert.Null(Planned(s_unplannable, new PlanRequest { HoursPerWeek = 0 }).Best);
    }

    private static bool IsCover(string id) =>
        ShippedRules.Knowledge.Practices.GetValueOrDefault(id) is { Kind: "covering" };

    private static Outcome<PlanCase, string> Case(VisitArea area, PlanRequest request) =>
        PlanCase.Of(ShippedRules.Advisor, AreaCase.Alone(Years.DemoDay, area), request);

    private static AreaPlan Planned(VisitArea area, PlanRequest request, PlanEffort? effort = null)
    {
        Outcome<PlanCase, string> plan = Case(area, request);
        Assert.True(plan.IsGood, string.Join(' ', plan.Refusals));
        return PlanSearch.Of(plan.Value, effort, stop: TestContext.Current.CancellationToken);
    }
}
