using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Season.Programme;

public sealed class SeasonCaseTests
{
    [Fact]
    public void Many_worked_visits_can_be_planned_and_no_problem_has_a_fault()
    {
        Assert.True(Years.All.Length > Sizes.Of(5, 100));
        Assert.All(Years.All, season => Assert.Empty(season.Problem.Faults()));
    }

    [Fact]
    public void What_the_visit_leaves_open_closes_every_week_to_what_hangs_on_it()
    {
        SeasonCase open = Years.Of(Years.DemoYard.Without("stock"), Years.DemoDay, new SeasonRequest());
        Assert.Empty(open.Treatments);
    }

    [Fact]
    public void Nothing_goes_on_under_film()
    {
        SeasonCase season = Years.DemoCase;
        int covered = season.Year.FirstWeekFrom(new DateOnly(2026, 11, 20));
        int open = season.Year.WeekOf(season.Through.UncoveringAfter(new DateOnly(2026, 11, 20))!.Value);
        Assert.True(open > covered + 10);
        Assert.All(season.Problem.Candidates, candidate => Assert.All(candidate.Cost[covered..open], Assert.Null));
    }

    [Fact]
    public void What_must_lie_in_the_open_before_film_goes_on_stays_away_for_as_long()
    {
        SeasonCase season = Years.DemoCase;
        foreach ((Treatment treatment, SeasonCandidate candidate) in season.Treatments.Zip(season.Problem.Candidates))
        {
            if (treatment.DaysBeforeCovering is not { } days)
                continue;
            DateOnly last = new DateOnly(2026, 11, 20).AddDays(-(int)days);
            Assert.All(
                Enumerable
                    .Range(0, SeasonYear.Weeks)
                    .Where(week =>
                        season.Year.DayOf(week) > last && season.Year.DayOf(week) < new DateOnly(2026, 11, 20)
                    ),
                week => Assert.Null(candidate.Cost[week])
            );
        }
    }

    [Fact]
    public void Ripe_seed_seen_here_means_more_to_come()
    {
        VisitArea seeding = Years.DemoYard with { Weeds = [new WeedSeen("eclipta", "seeding", 3)] };
        VisitArea expected = Years.DemoYard with { Weeds = [new WeedSeen("eclipta", "expected", null)] };
        Assert.Equal(1.5, Seedlings(seeding) / Seedlings(expected), 6);

        static double Seedlings(VisitArea area) =>
            Years
                .Of(area, Years.DemoDay, new SeasonRequest())
                .Weeds.Single(weed => weed.Weed.Id == "eclipta")
                .Emergence.Sum();
    }

    [Fact]
    public void A_mulch_on_the_pots_leaves_less_to_escape()
    {
        SeasonCase bare = Years.DemoCase;
        VisitArea yard = Years.DemoYard.With("mulch", "rice-hulls");
        SeasonCase mulched = Years.Of(
            yard with
            {
                Answers = yard.Answers.SetItem("mulch-depth", new Answer.Number(2.5m)),
            },
            Years.DemoDay,
            new SeasonRequest()
        );
        Assert.True(Escapes(mulched) < Escapes(bare) * 0.7m);

        static decimal Escapes(SeasonCase season) =>
            season.Weeds.Where(weed => weed.Weed.Id == "spurge-spotted").Sum(weed => weed.EscapeUsd.Sum());
    }

    [Fact]
    public void Uses_of_the_year_before_count_against_the_limit_of_the_active_in_every_product()
    {
        VisitArea yard = Years.DemoYard with
        {
            Past = [new PastApplication("prodiamine-granule", new DateOnly(2026, 1, 5), "clean", WordSet.Empty)],
        };
        SeasonCase season = Years.Of(yard, Years.DemoDay, new SeasonRequest());
        WeedAdvisor.Planning.Season.Search.ActiveLimit prodiamine = season.Problem.Limits.Yearly.Single(limit =>
            limit.Active == "prodiamine"
        );
        // 1.5 lb/acre, the highest published rate, is all that a year may see.
        Assert.Equal(1.681m, Math.Round(prodiamine.KgUsedBefore, 3));
        SeasonPlan plan = Years.Best(season);
        Assert.DoesNotContain(plan.Applications, one =>
            ShippedRules.Knowledge.Treatments[one.Name].Actives.Any(active => active.Name == "prodiamine")
        );
    }

    [Theory]
    [InlineData("region", "the region is not answered")]
    [InlineData("labour-rate", null)]
    public void What_a_plan_hangs_on_is_asked_for(string question, string? said)
    {
        if (said is null)
            Assert.True(
                SeasonCase
                    .Of(
                        ShippedRules.Advisor,
                        AreaCase.Alone(Years.DemoDay, Years.DemoYard.Without(question)),
                        new SeasonRequest()
                    )
                    .IsGood
            );
        else
            Assert.Contains(
                said,
                Years.Refusal(Years.DemoYard.Without(question), new SeasonRequest()),
                StringComparison.Ordinal
            );
    }

    [Fact]
    public void An_area_without_weeds_named_or_without_its_past_is_refused()
    {
        Assert.Contains(
            "no weed is named",
            Years.Refusal(Years.DemoYard with { Weeds = null }, new SeasonRequest()),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "nothing is said of earlier applications",
            Years.Refusal(Years.DemoYard with { Past = null }, new SeasonRequest()),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void An_area_without_pots_is_refused() =>
        Assert.Contains(
            "No pots stand here",
            Years.Refusal(Years.DemoYard.With("place", "house-floor"), new SeasonRequest()),
            StringComparison.Ordinal
        );

    public static TheoryData<string, SeasonRequest> Bad =>
        new()
        {
            {
                "An hour of labour costs 0 to 10000 US dollars, not -1",
                new SeasonRequest { WageUsdPerHour = -1 }
            },
            {
                "There are 1 to 52 whole weeks between two weeding rounds",
                new SeasonRequest { RoundsWeeks = 0 }
            },
            {
                "Weeks of the plan are 0 to 51",
                new SeasonRequest { Closed = [52] }
            },
            {
                "A budget is 0 or more",
                new SeasonRequest { BudgetUsd = -5 }
            },
            {
                "At least 4 and at most 2 applications cannot both be",
                new SeasonRequest { AtLeast = 4, AtMost = 2 }
            },
            {
                "Did you mean 'oryzalin-spray'?",
                new SeasonRequest { Dropped = ["oryzalin-sprey"] }
            },
            {
                "The plan begins on the day of the visit, 2026-04-14, or later",
                new SeasonRequest { From = new DateOnly(2026, 4, 13) }
            },
            {
                "clear here in no week",
                new SeasonRequest { MustUse = ["glyphosate-empty-house"] }
            },
        };

    [Theory]
    [MemberData(nameof(Bad))]
    public void A_request_that_cannot_be_is_refused_in_words(string said, SeasonRequest request) =>
        Assert.Contains(said, Years.Refusal(Years.DemoYard, request), StringComparison.Ordinal);
}
