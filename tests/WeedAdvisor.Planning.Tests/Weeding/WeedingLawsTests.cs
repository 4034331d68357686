using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Tests.Weeding;

/// <summary>What holds for any plan.</summary>
public sealed class WeedingLawsTests
{
    [Fact]
    public void Every_plant_that_came_up_is_pulled_dead_or_standing() =>
        RandomPlans.Any.Sample(plan =>
            Yard.Run(plan)
                .Weeds.All(weed =>
                {
                    double came = weed.StandingAtStart + weed.Emerged,
                        went = weed.Pulled + weed.Dead + weed.Standing;
                    return Math.Abs(came - went) <= 1e-9 * Math.Max(1, came);
                })
        );

    [Fact]
    public void Weeds_of_all_rounds_add_up_to_the_weeds_pulled_and_seconds_to_the_hours() =>
        RandomPlans.Any.Sample(plan =>
        {
            WeedingSeason season = Yard.Run(plan);
            double pulled = season.Rounds.Sum(round => round.Pulled.Sum());
            double seconds = season
                .Rounds.Append(season.Clearing)
                .Sum(round => round.Pulled.Zip(plan.Numbers.PullSeconds).Sum(one => one.First * one.Second));
            return Near(pulled, season.Pulled) && Near(seconds / 3600, season.PullingHours);
        });

    [Fact]
    public void Nothing_seeds_when_every_round_comes_before_the_first_seed_and_misses_nothing() =>
        Gen.Select(RandomPlans.Any, Gen.Int[1, 12], Gen.Double[0, 5])
            .Sample(
                (plan, interval, smallest) =>
                {
                    ImmutableArray<PlannedWeed> inTime =
                    [
                        .. plan
                            .Weeds.Where(weed =>
                                OldestPulled(weed.Traits, interval, smallest) <= weed.Traits.FirstSeedWeek
                            )
                            .Select(weed => weed with { Standing = [] }),
                    ];
                    if (inTime.IsEmpty)
                        return true;
                    WeedingPlan strict = plan with
                    {
                        Weeds = inTime,
                        IntervalWeeks = interval,
                        Missed = 0,
                        SmallestPulledCm = smallest,
                    };
                    return Yard.Run(strict).SeedsShed == 0;
                }
            );

    [Fact]
    public void Two_week_rounds_that_take_all_from_an_inch_up_are_such_plans() =>
        Assert.All(Yard.SixWeeds.Select(Yard.Traits), weed =>
            Assert.True(OldestPulled(weed, 2, 2.5) <= weed.FirstSeedWeek)
        );

    [Fact]
    public void A_higher_wage_never_costs_less() =>
        Gen.Select(RandomPlans.Any, Gen.Double[0, 200], Gen.Double[0, 200])
            .Sample((plan, wage, more) => Yard.Run(plan).CostUsd(wage + more) >= Yard.Run(plan).CostUsd(wage));

    // In crowded pots more weeds mean smaller ones, so the law holds where there is room.
    [Fact]
    public void Missing_more_never_means_fewer_seeds() =>
        Gen.Select(RandomPlans.WithRoom, Gen.Double[0, 1])
            .Sample(
                (plan, share) =>
                {
                    double fewer = Yard.Run(plan).SeedsShed;
                    double more = Yard.Run(plan with { Missed = plan.Missed + ((1 - plan.Missed) * share) }).SeedsShed;
                    return more >= fewer * (1 - 1e-9);
                }
            );

    [Fact]
    public void Full_control_of_clean_pots_means_no_weeds() =>
        RandomPlans.Any.Sample(plan =>
        {
            WeedingSeason season = Yard.Run(plan with { Weeds = [.. plan.Weeds.Select(Stopped)] });
            return season.Weeds.All(weed => weed is { Emerged: 0, Pulled: 0, Standing: 0, SeedsShed: 0 });

            PlannedWeed Stopped(PlannedWeed weed) =>
                weed with
                {
                    Standing = [],
                    Control = [.. Enumerable.Repeat(1.0, plan.Weeks)],
                };
        });

    [Fact]
    public void A_pot_holds_only_so_many() =>
        RandomPlans.Any.Sample(plan =>
        {
            WeedingSeason season = Yard.Run(plan);
            double most = Math.Max(1000 * plan.Numbers.MostWeedsPerPot, season.Weeds.Sum(weed => weed.StandingAtStart));
            return season.Standing <= most * (1 + 1e-9)
                && season.Rounds.All(round => round.Pulled.Sum() <= most * (1 + 1e-9));
        });

    [Fact]
    public void With_room_twice_the_weeds_are_twice_the_pulling() =>
        RandomPlans.WithRoom.Sample(plan =>
        {
            WeedingPlan twice = plan with { Weeds = [.. plan.Weeds.Select(Doubled)] };
            return Near(Yard.Run(twice).PullingHours, 2 * Yard.Run(plan).PullingHours);

            static PlannedWeed Doubled(PlannedWeed weed) =>
                weed with
                {
                    Traits = weed.Traits with { SeedlingsPerYear = 2 * weed.Traits.SeedlingsPerYear },
                    Standing = [.. weed.Standing.Select(plants => 2 * plants)],
                };
        });

    // A plant just too small at one round is pulled an interval later.
    private static int OldestPulled(WeedTraits weed, int interval, double smallest) =>
        weed.DiameterCm.Count(cm => cm < smallest) - 1 + interval;

    private static bool Near(double one, double other) => Math.Abs(one - other) <= 1e-9 * Math.Max(1, Math.Abs(one));
}
