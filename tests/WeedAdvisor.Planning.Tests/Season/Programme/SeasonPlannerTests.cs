using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Season.Programme;

public sealed class SeasonPlannerTests
{
    private static readonly Gen<SeasonRequest> s_requests =
        from atMost in Gen.Int[0, 7]
        from closed in Gen.Int[0, 51].HashSet[0, 20]
        from budget in Gen.Int[20, 200].Nullable()
        from run in Gen.Int[1, 3].Nullable()
        select new SeasonRequest
        {
            AtMost = atMost,
            Closed = [.. closed],
            BudgetUsd = budget,
            RunOfSite = run,
        };

    [Fact]
    public void No_plan_of_any_worked_visit_breaks_a_rule_whatever_is_asked() =>
        Gen.Select(Gen.Int[0, Years.All.Length - 1], s_requests)
            .Sample(
                (index, request) =>
                {
                    SeasonCase season = Years.All[index].With(request, ShippedRules.Knowledge);
                    SeasonPlan plan = Years.Best(season);
                    Assert.True(plan.Proven);
                    Assert.True(plan.Applications.Length <= request.AtMost);
                    Assert.True(request.BudgetUsd is not { } budget || plan.ApplicationCost <= budget);
                    foreach (SeasonApplication one in plan.Applications)
                    {
                        Assert.DoesNotContain(one.Week, request.Closed);
                        AssertClear(season, one);
                    }

                    AssertIntervals(plan);
                    AssertUses(season, plan);
                },
                iter: Sizes.Of(10, 500),
                threads: 1
            );

    [Fact]
    public void Sites_of_action_rotate_and_the_last_one_of_the_year_before_counts()
    {
        SeasonPlan plan = Years.Best(Years.DemoCase);
        string[][] groups =
        [
            GroupsOf("isoxaben-trifluralin-granule"), // what went on last, in August of the year before
            .. plan.Applications.Select(one => GroupsOf(one.Name)),
        ];
        Assert.True(groups.Length > 2);
        for (int i = 1; i < groups.Length; i++)
            Assert.Empty(groups[i].Intersect(groups[i - 1]));

        static string[] GroupsOf(string treatment) =>
            [.. ShippedRules.Knowledge.Treatments[treatment].Actives.Select(active => active.Group ?? active.Name)];
    }

    [Fact]
    public void Next_year_begins_where_this_one_ended()
    {
        YearPlan year = Years.DemoQuick;
        SeasonPlan plan = year.Plan!;
        SeasonCase next = NextYear.Of(ShippedRules.Advisor, AreaCase.Alone(Years.DemoDay, Years.DemoYard), year).Value!;
        Assert.Equal(Years.DemoCase.Year.DayOf(52), next.Year.From);
        Assert.Contains(next.Problem.History, use => use.Used.Name == plan.Applications[^1].Name && use.Week < 0);
        SeasonPlan after = Years.Best(next);
        Assert.NotEmpty(after.Applications);
        Assert.Empty(Groups(plan.Applications[^1]).Intersect(Groups(after.Applications[0])));
        AssertIntervals(
            plan with
            {
                Applications =
                [
                    .. plan.Applications,
                    .. after.Applications.Select(one => one with { Week = one.Week + 52 }),
                ],
            }
        );

        static string[] Groups(SeasonApplication one) =>
            [.. ShippedRules.Knowledge.Treatments[one.Name].Actives.Select(active => active.Group ?? active.Name)];
    }

    [Fact]
    public void The_plan_is_cheaper_than_hands_alone_and_every_rule_has_its_price()
    {
        YearPlan year = Years.DemoFull;
        Assert.True(year.Way!.Usd < year.HandsOnlyUsd);
        Assert.True(year.LeastUsd <= year.Way.Usd);
        Assert.Contains(year.RulePrices, price => price.Rule.Kind == SeasonWishKind.Rotation);
        Assert.All(year.RulePrices, price => Assert.True(price.Price >= 0));
        Assert.All(year.MonthPrices, month => Assert.True(month.Usd >= 0));
        Assert.Equal(3, year.NextBest.Length);
        Assert.Equal(year.NextBest.OrderBy(next => next.Way.Usd), year.NextBest);
    }

    [Fact]
    public void Wishes_that_clash_are_named()
    {
        SeasonCase season = Years.DemoCase.With(
            new SeasonRequest { AtLeast = 4, BudgetUsd = 20 },
            ShippedRules.Knowledge
        );
        YearPlan year = Years.Full(season);
        Assert.Null(year.Plan);
        Assert.Equal(["a budget of 20", "at least 4 applications"], year.Clash.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void What_is_dropped_stays_away_and_what_must_go_on_does()
    {
        string first = Years.Best(Years.DemoCase).Applications[0].Name;
        SeasonPlan without = Plan(new SeasonRequest { Dropped = [first] });
        Assert.DoesNotContain(without.Applications, one => one.Name == first);
        Assert.Contains(Plan(new SeasonRequest { MustUse = ["trifluralin-granule"] }).Applications, one =>
            one.Name == "trifluralin-granule"
        );

        static SeasonPlan Plan(SeasonRequest request) =>
            Years.Best(Years.DemoCase.With(request, ShippedRules.Knowledge));
    }

    [Fact]
    public void Before_each_preventive_weeds_are_cleared_and_after_it_somebody_looks()
    {
        YearPlan year = Years.DemoQuick;
        Assert.NotEmpty(year.Uses);
        foreach (PlannedUse use in year.Uses)
        {
            Assert.Contains(year.Work, work => work.Kind == PlannedWorkKind.CleanUp && work.LastDay == use.Days.First);
            Assert.Contains(year.Work, work =>
                work.Kind == PlannedWorkKind.LookAgain && work.Action == use.Treatment && work.Day > use.Days.Last
            );
        }

        Assert.Equal(year.Work.OrderBy(work => work.Day).Select(work => work.Day), year.Work.Select(work => work.Day));
        Assert.Contains(year.Work, work => work.Kind == PlannedWorkKind.Film && work.Day == new DateOnly(2026, 11, 20));
        Assert.Contains(year.Work, work => work.Kind == PlannedWorkKind.Practice);
    }

    [Fact]
    public void Escapes_and_closed_weeks_are_named_with_their_span()
    {
        YearPlan year = Years.DemoQuick;
        Assert.Contains(year.Escapes, span => span.Weed == "eclipta");
        Assert.All(year.Escapes, span => Assert.True(span.FromWeek <= span.ToWeek && span.Seedlings > 0));
        Assert.Contains(year.Closed, span =>
            year.Case.Year.DayOf(span.ToWeek) > new DateOnly(2027, 1, 1) && span.Because.Length > 10
        );
    }

    [Fact]
    public void The_same_case_gives_the_same_plan_again()
    {
        YearPlan one = Years.DemoFull;
        YearPlan again = Years.Full(Years.Of(Years.DemoYard, Years.DemoDay, new SeasonRequest()));
        Assert.Equal(one.Plan!.Applications, again.Plan!.Applications);
        Assert.Equal(one.Work, again.Work);
        Assert.Equal(one.Plan.Total, again.Plan.Total);
    }

    // The rules themselves are asked again, on the area as it stands on the days of that week.
    private static void AssertClear(SeasonCase season, SeasonApplication one) =>
        Assert.Contains(Enumerable.Range(0, 7).Select(season.Year.DayOf(one.Week).AddDays), day =>
            ShippedRules
                .On(season.Through.On(day))
                .Clear.Any(clear => clear.Action == one.Name && clear.Status == ActionStatus.Clear)
        );

    private static void AssertIntervals(SeasonPlan plan)
    {
        foreach ((SeasonApplication early, int i) in plan.Applications.Select((one, i) => (one, i)))
        {
            foreach (SeasonApplication late in plan.Applications.Skip(i + 1))
            {
                Treatment first = ShippedRules.Knowledge.Treatments[early.Name],
                    second = ShippedRules.Knowledge.Treatments[late.Name];
                string[] shared =
                [
                    .. first
                        .Actives.Select(active => active.Name)
                        .Intersect(second.Actives.Select(active => active.Name)),
                ];
                if (shared.Length == 0)
                    continue;
                decimal ofActives = ShippedRules
                    .Knowledge.ActiveLimits.Values.Where(limit => shared.Contains(limit.Active))
                    .Max(limit => limit.IntervalDays)
                    ?? 0;
                decimal days = Math.Max(ofActives, Math.Max(first.RepeatAfterDays ?? 0, second.RepeatAfterDays ?? 0));
                Assert.True((late.Week - early.Week) * 7 >= days, $"{early.Name}, {late.Name}");
            }
        }
    }

    private static void AssertUses(SeasonCase season, SeasonPlan plan)
    {
        foreach (IGrouping<string, SeasonApplication> uses in plan.Applications.GroupBy(one => one.Name))
        {
            Treatment treatment = ShippedRules.Knowledge.Treatments[uses.Key];
            Assert.True(treatment.UsesPerYear is not { } limit || uses.Count() <= limit);
        }

        foreach (Knowledge.Records.ActiveLimit limit in ShippedRules.Knowledge.ActiveLimits.Values)
        {
            Treatment[] holding =
            [
                .. plan
                    .Applications.Select(one => ShippedRules.Knowledge.Treatments[one.Name])
                    .Where(treatment => treatment.Actives.Any(active => active.Name == limit.Active)),
            ];
            Assert.True(limit.UsesPerYear is not { } uses || holding.Length <= uses, season.Area.Id);
            Assert.True(
                limit.KgAiHaPerYear is not { } kg
                    || holding
                        .Where(treatment =>
                            limit.Form is null || limit.Form == (treatment.Formulation == "GR" ? "granule" : "spray")
                        )
                        .Sum(treatment => LeastKg(treatment, limit.Active))
                        <= kg + 0.005m,
                season.Area.Id
            );
        }
    }

    // Reckoned here from the records once more: pounds per acre by 1.120851 (NIST Handbook 44, Appendix C).
    private static decimal LeastKg(Treatment treatment, string active)
    {
        decimal total = treatment.Rates.Max(rate => rate.AiLbPerAcre?.High) ?? 0;
        Active one = treatment.Actives.Single(each => each.Name == active);
        decimal share = one.Percent is { } percent ? percent / treatment.Actives.Sum(each => each.Percent)!.Value : 1;
        return total * share * 1.12085m;
    }
}
