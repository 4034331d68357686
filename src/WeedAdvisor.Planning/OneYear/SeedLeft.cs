using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>
/// The work that seed and roots left in the pots make in the year after, at one interval of rounds whatever is chosen
/// now; of more seedlings than find room before they are pulled only those that do count.
/// </summary>
internal static class SeedLeft
{
    private const double Pots = 1000,
        SecondsInHour = 3600;

    /// <summary>The item, for 1000 pots.</summary>
    public static CostItem Item(YearCase year, WeedingPlan plan, WeedingSeason season, decimal wage)
    {
        double toCome = season.Weeds.Sum(weed => weed.SeedlingsToCome);
        double counted = CountedShare(plan.Numbers, toCome);
        double hours =
            counted
            * plan.Weeds.Select(
                    (weed, i) => season.Weeds[i].SeedlingsToCome * year.NextYearHours(plan.Numbers, weed.Traits)
                )
                .Sum();
        decimal rounded = Math.Round((decimal)hours, 6);
        return new CostItem(
            "next-year",
            "Seed left for next year",
            CostKind.NextYear,
            rounded * wage,
            rounded,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{toCome * counted:#,0} seedlings to come, {rounded:0.##} h x ${wage:0.##} at rounds of "
                    + $"{plan.Numbers["next-year-rounds-weeks"]:0} weeks"
            )
        )
        {
            IsOfWeeds = true,
        };
    }

    /// <summary>Share of the seedlings to come that counts, 0 to 1.</summary>
    public static double CountedShare(WeedingNumbers numbers, double toCome)
    {
        double most = MostCounted(numbers);
        return toCome <= most ? 1 : most / toCome;
    }

    /// <summary>The most seedlings to come that count, in 1000 pots.</summary>
    public static double MostCounted(WeedingNumbers numbers) => Pots * numbers["next-year-seedlings-per-pot-at-most"];

    /// <summary>
    /// Hours of pulling that one seedling makes in the year after, with its descendants of that year.
    /// </summary>
    public static double HoursOfOne(WeedingNumbers numbers, WeedTraits traits)
    {
        const int weeks = WeedTraits.WeeksInYear;
        var alone = PlannedWeed.Free(traits);
        var after = new WeedingPlan
        {
            Weeds = [alone],
            FirstWeek = 0,
            Weeks = weeks,
            IntervalWeeks = (int)numbers["next-year-rounds-weeks"],
            Missed = numbers.Missed,
            SmallestPulledCm = numbers.SmallestPulledCm,
            Numbers = numbers,
        };
        ImmutableArray<double> full = [.. Enumerable.Repeat(1.0, weeks)];
        var worth = PlantWorth.Of(
            after,
            RoundSchedule.Of(after),
            alone,
            new WeedingCourse(full, full, full),
            new PiecePrices([.. numbers.PullSeconds.Select(seconds => seconds / SecondsInHour)], ToCome: 0),
            new double[weeks]
        );
        return traits.WeekShare.Zip(worth.Seedling).Sum(week => week.First * week.Second);
    }
}
