using System.Collections.Immutable;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>
/// What the seedlings of each weed and week cost when no preventive holds them back, with all that descends from them,
/// US dollars for 1000 pots. A preventive saves its share of that.
/// </summary>
/// <param name="Usd">By weed, in the order of the year, and week.</param>
/// <param name="RestUsd">What the year costs besides.</param>
internal sealed record YearEscapes(ImmutableArray<ImmutableArray<double>> Usd, double RestUsd)
{
    private const double SecondsInHour = 3600;

    /// <summary>
    /// As they are when a way is taken: with its crowding, and its control of descendants. For that way itself the sum
    /// is exact; for others near it, near.
    /// </summary>
    /// <param name="year">The year.</param>
    /// <param name="way">The way, reckoned.</param>
    public static YearEscapes At(YearCase year, Way way)
    {
        if (!way.Parts.IsEmpty)
            return Mean([.. way.Parts.Select(part => At(year, part))]);
        var plan = YearWeeding.Of(year, way.Plan, Variation.None);
        WeedingSeason season = way.Season;
        (double old, double overgrown) = LostPlants.Grown(season);
        double toCome = season.Weeds.Sum(weed => weed.SeedlingsToCome);
        double[][] control = [.. plan.Weeds.Select(weed => weed.Control.ToArray())];
        (double[][] usd, _) = Weighed(
            year,
            way.Plan,
            plan,
            season.Course,
            LostPlants.UsdOfOne(year, old, overgrown),
            SeedLeft.CountedShare(plan.Numbers, toCome),
            control,
            isLeast: false
        );
        double counted = 0;
        for (int weed = 0; weed < usd.Length; weed++)
        {
            double[] held = WayControl.Held(year, way.Plan, year.Weeds.Counted[weed], Variation.None);
            for (int week = 0; week < held.Length; week++)
                counted += usd[weed][week] * (1 - held[week]);
        }

        return new YearEscapes([.. usd.Select(row => row.ToImmutableArray())], (double)way.Usd - counted);
    }

    /// <summary>
    /// The least they can be whatever preventives go on besides some standing measures: a floor under the cost of every
    /// such year.
    /// </summary>
    /// <param name="year">The year.</param>
    /// <param name="standing">The rounds and measures that stand, reckoned without any preventive.</param>
    /// <param name="most">By weed and week, the most that preventives can hold back.</param>
    /// <param name="capUsd">
    /// A price of the year, US dollars for 1000 pots: only years that cost less are spoken of, so the floor is one
    /// under every year that does.
    /// </param>
    public static YearEscapes Least(
        YearCase year,
        Way standing,
        double[][] most,
        double capUsd = double.PositiveInfinity
    )
    {
        // One part of the pots may cost as much as all of them where the others cost nothing.
        if (!standing.Parts.IsEmpty)
            return Mean([.. standing.Parts.Select(part => Least(year, part, most, capUsd * standing.Parts.Length))]);
        var plan = YearWeeding.Of(year, standing.Plan, Variation.None);
        ImmutableArray<int> walked = RoundSchedule.Of(plan);
        // What earlier applications still hold is among the most, not among what stands: it ends.
        var least = LeastCrowding.Of(plan, walked);
        double[][] control =
        [
            .. plan.Weeds.Select(
                (_, weed) =>
                {
                    double[] through = WayControl.Through(
                        year,
                        standing.Plan,
                        year.Weeds.Counted[weed],
                        Variation.None
                    );
                    return most[weed].Select((held, week) => 1 - ((1 - held) * through[week])).ToArray();
                }
            ),
        ];
        (double[][] usd, double plants) = Weighed(
            year,
            standing.Plan,
            plan,
            least.Course,
            LostPlants.UsdOfOne(year, least.Old, least.Overgrown, capUsd),
            CountedShare(year, plan, least.ToCome, capUsd),
            control,
            isLeast: true
        );
        return new YearEscapes([.. usd.Select(row => row.ToImmutableArray())], (double)standing.FixedUsd + plants);
    }

    private static YearEscapes Mean(YearEscapes[] parts) =>
        new(
            [
                .. parts[0]
                    .Usd.Select(
                        (row, weed) =>
                            row.Select((_, week) => parts.Average(part => part.Usd[weed][week])).ToImmutableArray()
                    ),
            ],
            parts.Average(part => part.RestUsd)
        );

    // More seedlings than count would by themselves cost what the cheapest of them do; where that is more than the cap,
    // there are no more.
    private static double CountedShare(YearCase year, WeedingPlan plan, double toCome, double capUsd)
    {
        double cheapest = plan.Weeds.Min(weed => year.NextYearHours(plan.Numbers, weed.Traits)) * (double)year.WageUsd;
        return SeedLeft.MostCounted(plan.Numbers) * cheapest >= capUsd
            ? 1
            : SeedLeft.CountedShare(plan.Numbers, toCome);
    }

    private static (double[][] Usd, double Standing) Weighed(
        YearCase year,
        WayPlan way,
        WeedingPlan plan,
        WeedingCourse course,
        (double Old, double Overgrown) lostUsd,
        double countedShare,
        double[][] control,
        bool isLeast
    )
    {
        double wage = (double)year.WageUsd,
            standing = 0;
        ImmutableArray<double> pulled = [.. plan.Numbers.PullSeconds.Select(seconds => seconds * wage / SecondsInHour)];
        ImmutableArray<int> walked = RoundSchedule.Of(plan);
        double[][] usd = new double[plan.Weeds.Length][];
        for (int i = 0; i < usd.Length; i++)
        {
            PlannedWeed weed = plan.Weeds[i];
            double toCome = year.NextYearHours(plan.Numbers, weed.Traits) * wage * countedShare;
            var worth = PlantWorth.Of(
                plan,
                walked,
                weed,
                course,
                new PiecePrices(pulled, toCome) { GrewOld = lostUsd.Old, GrewOvergrown = lostUsd.Overgrown },
                control[i],
                isLeast
            );
            standing += worth.OfStanding(weed.Standing);
            double[] through = WayControl.Through(year, way, year.Weeds.Counted[i], Variation.None);
            usd[i] = new double[plan.Weeks];
            for (int week = 0; week < plan.Weeks; week++)
            {
                usd[i][week] =
                    weed.Traits.ExpectedEmergence((plan.FirstWeek + week) % WeedTraits.WeeksInYear)
                    * course.Open[week]
                    * course.Room[week]
                    * through[week]
                    * worth.Seedling[week];
            }
        }

        return (usd, standing);
    }
}
