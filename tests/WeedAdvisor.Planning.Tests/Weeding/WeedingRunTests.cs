using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Weeding;

/// <summary>Small cases that can be worked out by hand.</summary>
public sealed class WeedingRunTests
{
    [Fact]
    public void One_cohort_dies_is_missed_and_pulled_as_worked_out_by_hand()
    {
        // 1000 seedlings just up, in week 22. At the first round they are too small (0.1 cm). Two weeks on 92 % x 92 %
        // are left, and one in ten is missed.
        WeedingSeason season = Yard.Run(Alone("spurge-spotted", weeks: 3, interval: 2));
        Assert.Equal(2, season.Rounds.Length);
        Assert.Equal(0, season.Rounds[0].Pulled.Sum());
        Assert.Equal(1000 * 0.92 * 0.92 * 0.9, season.Rounds[1].Pulled.Sum(), 9);
        Assert.Equal(season.Rounds[1].Pulled.Sum() * 3 / 3600, season.Rounds[1].PullingHours.Sum(), 9);
        Assert.Equal(12.0 / 60, season.Rounds[1].WalkingHours, 9);
        Assert.Equal(1000 * 0.92 * 0.92 * 0.1 * 0.92, season.Standing, 9);
        Assert.Equal(0, season.SeedsShed);
    }

    [Fact]
    public void A_plant_left_standing_seeds_from_its_first_seed_week_on()
    {
        WeedTraits spurge = Yard.Traits("spurge-spotted");
        Assert.Equal(4, spurge.FirstSeedWeek);
        Assert.Equal(0, Yard.Run(Alone("spurge-spotted", weeks: 4, interval: 52)).SeedsShed);
        double alive = 1000 * Enumerable.Range(0, 4).Aggregate(1.0, (left, age) => left * (1 - spurge.DeathShare[age]));
        Assert.Equal(alive * 1000 / 10, Yard.Run(Alone("spurge-spotted", weeks: 5, interval: 52)).SeedsShed, 6);
    }

    [Fact]
    public void Weeds_with_roots_that_live_on_come_again()
    {
        WeedTraits nutsedge = Yard.Traits("nutsedge-yellow");
        var plan = new WeedingPlan
        {
            Weeds = [new PlannedWeed(nutsedge, [.. Enumerable.Repeat(1.0, 10)], [0, 0, 0, 0, 0, 0, 0, 0, 100])],
            FirstWeek = 22,
            Weeks = 10,
            IntervalWeeks = 10,
            Missed = 0,
            SmallestPulledCm = 0,
            Numbers = Yard.Numbers,
        };
        Assert.Equal(40, Yard.Run(plan).Weeds[0].Emerged, 9);
    }

    [Fact]
    public void No_round_is_walked_long_after_the_last_weed_has_come_up()
    {
        WeedingSeason season = Yard.Run(Yard.Setup("spurge-spotted"), 1);
        WeedTraits spurge = Yard.Traits("spurge-spotted");
        Assert.Contains(season.Rounds, round => spurge.WeekShare[round.Week] > 0);
        Assert.All(season.Rounds, round =>
            Assert.True(
                Enumerable
                    .Range(round.Week - RoundSchedule.WeeksAfterSeason(1), RoundSchedule.WeeksAfterSeason(1) + 1)
                    .Any(week => week <= 0 || spurge.WeekShare[week] > 0),
                $"week {round.Week}"
            )
        );
        Assert.True(season.Rounds.Length < 52);
    }

    [Fact]
    public void The_year_of_a_weed_is_shared_among_the_weeks_of_its_months()
    {
        WeedTraits spurge = Yard.Traits("spurge-spotted");
        Assert.Equal(1, spurge.WeekShare.Sum(), 12);
        Assert.Equal(0, spurge.ExpectedEmergence(2));
        Assert.Equal(spurge.SeedlingsPerYear, Enumerable.Range(0, 52).Sum(spurge.ExpectedEmergence), 9);
        Assert.Throws<ArgumentOutOfRangeException>(() => spurge.ExpectedEmergence(52));
        Assert.Equal(0, WeedTraits.WeekOf(new DateOnly(2026, 1, 7)));
        Assert.Equal(51, WeedTraits.WeekOf(new DateOnly(2028, 12, 31)));
    }

    [Fact]
    public void A_place_changes_what_comes_up()
    {
        double mown = Pressure(Yard.Site),
            wet = Pressure(Yard.Site with { SurfaceMoisture = "wet" });
        Assert.Equal(1.5 * mown, wet, 9);
        Assert.Equal(0.5 * mown, Pressure(Yard.Site with { SurfaceMoisture = "dry-between" }), 9);
        Assert.Equal(1.5 * mown, Pressure(Yard.Site with { Surroundings = "weedy-seeding" }), 9);
        Assert.Equal(0.6 * mown, Pressure(Yard.Site with { Surroundings = "weed-free" }), 9);
        Assert.Equal(mown, Pressure(Yard.Site with { Surroundings = null, SurfaceMoisture = null }), 9);

        static double Pressure(WeedSite site) =>
            WeedTraits
                .Of(ShippedRules.Knowledge.Weeds["bittercress-hairy"], site, Yard.Numbers)
                .Value!.SeedlingsPerYear;
    }

    [Fact]
    public void South_of_the_equator_weeds_come_up_half_a_year_later()
    {
        foreach (string weed in Yard.SixWeeds)
        {
            double[] north = Months(weed, Hemisphere.North),
                south = Months(weed, Hemisphere.South);
            for (int month = 0; month < 12; month++)
                Assert.Equal(north[month] > 0, south[(month + 6) % 12] > 0);
            Assert.Equal(north.Sum(), south.Sum(), 9);
        }

        static double[] Months(string weed, Hemisphere hemisphere)
        {
            var site = Yard.Site with { Hemisphere = hemisphere };
            WeedTraits traits = WeedTraits.Of(ShippedRules.Knowledge.Weeds[weed], site, Yard.Numbers).Value!;
            double[] months = new double[12];
            for (int week = 0; week < WeedTraits.WeeksInYear; week++)
                months[new DateOnly(2025, 1, 4).AddDays(7 * week).Month - 1] += traits.ExpectedEmergence(week);
            return months;
        }
    }

    [Fact]
    public void Mulch_stops_light_needing_seed_best_and_does_little_when_thin()
    {
        double[] emerged = [Emerged(null), Emerged(new("bark", 1)), Emerged(new("bark", 5))];
        Assert.True(emerged[0] > emerged[1] && emerged[1] > emerged[2]);
        Assert.Equal(Emerged(new("bark", 5)), Emerged(new("discs", null)), 9);
        Assert.Equal(0.4, Emerged(new("bark", 5), "bittercress-hairy") / Emerged(null, "bittercress-hairy"), 9);

        static double Emerged(PotMulch? mulch, string weed = "eclipta") =>
            Yard.Run(Yard.Setup(weed) with { Mulch = mulch, Missed = 0 }, 2, Yard.Roomy).Weeds[0].Emerged;
    }

    [Fact]
    public void What_covers_the_pots_now_stands_there_from_the_start()
    {
        WeedingSetup seen = Yard.Setup("liverwort") with
        {
            Weeds = [new SetupWeed(ShippedRules.Knowledge.Weeds["liverwort"], "mature", 20, [])],
        };
        // A fifth of 1000 pots of 200 cm2, in plants 10 cm across.
        Assert.Equal(40_000 / (Math.PI * 25), Yard.Run(seen, 4).Weeds[0].StandingAtStart, 9);
        Assert.Equal(0, Yard.Run(Yard.Setup("liverwort"), 4).Weeds[0].StandingAtStart);
    }

    private static WeedingPlan Alone(string weed, int weeks, int interval) =>
        new()
        {
            Weeds = [new PlannedWeed(Yard.Traits(weed), [.. Enumerable.Repeat(1.0, weeks)], [1000])],
            FirstWeek = 22,
            Weeks = weeks,
            IntervalWeeks = interval,
            Missed = 0.1,
            SmallestPulledCm = 1,
            Numbers = Yard.Roomy,
        };
}
