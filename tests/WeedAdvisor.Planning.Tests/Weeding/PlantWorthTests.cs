using CsCheck;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Tests.Weeding;

/// <summary>What one plant is worth, held against the run of all of them.</summary>
public sealed class PlantWorthTests
{
    private static readonly PiecePrices s_prices = new([0.01, 0.02, 0.05, 0.3, 0.9], ToCome: 0.04)
    {
        GrewOld = 0.2,
        GrewOvergrown = 1.5,
    };

    private static Gen<WeedingPlan> Plans =>
        from plan in RandomPlans.Any
        from walked in Gen.Bool.Array[plan.Weeks]
        from frost in Gen.Double[0, 1].Array[plan.Weeks]
        from isCold in Gen.Bool
        from isNamed in Gen.Bool
        select plan with
        {
            RoundWeeks = isNamed ? [.. Enumerable.Range(0, plan.Weeks).Where(week => walked[week])] : null,
            Weeds = isCold ? [.. plan.Weeds.Select(weed => weed with { Frost = [.. frost] })] : plan.Weeds,
        };

    [Fact]
    public void What_a_year_costs_is_the_sum_of_what_its_plants_cost() =>
        Plans.Sample(plan =>
        {
            WeedingSeason season = Yard.Run(plan);
            double counted =
                season
                    .Rounds.Append(season.Clearing)
                    .Sum(round => round.Pulled.Zip(s_prices.Pulled).Sum(one => one.First * one.Second))
                + season.Weeds.Sum(weed =>
                    (weed.SeedlingsToCome * s_prices.ToCome)
                    + (weed.GrewOld * s_prices.GrewOld)
                    + (weed.GrewOvergrown * s_prices.GrewOvergrown)
                );
            double summed = plan.Weeds.Sum(weed => Arriving(plan, weed, season.Course, weed.Control.AsSpan()));
            Assert.Equal(counted, summed, 1e-7 * Math.Max(1, counted));
        });

    [Fact]
    public void The_least_worth_is_never_above_the_worth_of_any_course_that_is_less_crowded() =>
        Gen.Select(Plans, Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0, 1])
            .Sample(
                (plan, open, room, vigour, more) =>
                {
                    WeedingCourse course = Yard.Run(plan).Course;
                    var least = new WeedingCourse(
                        [.. course.Open.Select(share => share * open)],
                        [.. course.Room.Select(share => share * room)],
                        [.. course.Vigour.Select(share => share * vigour)]
                    );
                    foreach (PlannedWeed weed in plan.Weeds)
                    {
                        double[] most = [.. weed.Control.Select(share => share + ((1 - share) * more))];
                        PlantWorth low = Worth(plan, weed, least, most, isLeast: true);
                        PlantWorth high = Worth(plan, weed, course, weed.Control.AsSpan(), isLeast: false);
                        Assert.All(low.Seedling.Zip(high.Seedling), pair =>
                            Assert.True(pair.First <= pair.Second * (1 + 1e-12))
                        );
                    }
                }
            );

    private static double Arriving(
        WeedingPlan plan,
        PlannedWeed weed,
        WeedingCourse course,
        ReadOnlySpan<double> control
    )
    {
        PlantWorth worth = Worth(plan, weed, course, control, isLeast: false);
        double sum = worth.OfStanding(weed.Standing);
        for (int week = 0; week < plan.Weeks; week++)
        {
            double arriving =
                weed.Traits.ExpectedEmergence((plan.FirstWeek + week) % WeedTraits.WeeksInYear)
                * course.Open[week]
                * course.Room[week];
            sum += arriving * (1 - control[week]) * worth.Seedling[week];
        }

        return sum;
    }

    private static PlantWorth Worth(
        WeedingPlan plan,
        PlannedWeed weed,
        WeedingCourse course,
        ReadOnlySpan<double> control,
        bool isLeast
    ) => PlantWorth.Of(plan, RoundSchedule.Of(plan), weed, course, s_prices, control, isLeast);
}
