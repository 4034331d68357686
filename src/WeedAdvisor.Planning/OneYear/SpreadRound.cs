using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>
/// A way whose first round is spread over weeks: an equal part of the pots is cleaned in each, and what is laid goes on
/// with it. Every part is a way of its own, whose weeds grow on until its week; the whole is the mean of them, item by
/// item and week by week.
/// </summary>
internal static class SpreadRound
{
    /// <summary>The plans of the parts.</summary>
    public static ImmutableArray<WayPlan> PartsOf(WayPlan plan) =>
        [
            .. Enumerable
                .Range(0, plan.SpreadWeeks)
                .Select(week => plan with { SpreadWeeks = 1, FirstRoundWeek = plan.FirstRoundWeek + week }),
        ];

    /// <summary>The whole.</summary>
    /// <param name="plan">Its plan.</param>
    /// <param name="parts">The parts, reckoned for 1000 pots each, in the order of their weeks.</param>
    public static Way Whole(WayPlan plan, ImmutableArray<Way> parts) =>
        new(
            plan,
            [.. parts[0].Items.Select((item, i) => Mean([.. parts.Select(part => part.Items[i])]))],
            Mean([.. parts.Select(part => part.Season)]),
            parts[0].Tools
        )
        {
            Parts = parts,
        };

    private static CostItem Mean(ImmutableArray<CostItem> items) =>
        items.All(item => item == items[0])
            ? items[0]
            : items[0] with
            {
                Usd = items.Average(item => item.Usd),
                Hours = items.Average(item => item.Hours),
                Working =
                    $"the mean of {items.Length} parts of the pots, cleaned one week after the other: "
                    + string.Join(", ", items.Select(item => Dollars(item.Usd))),
            };

    private static string Dollars(decimal usd) => string.Create(CultureInfo.InvariantCulture, $"${usd:#,0.##}");

    private static WeedingSeason Mean(ImmutableArray<WeedingSeason> parts) =>
        new(
            parts[0].IntervalWeeks,
            [
                .. parts
                    .SelectMany(part => part.Rounds)
                    .GroupBy(round => round.Week)
                    .OrderBy(rounds => rounds.Key)
                    .Select(rounds => Mean([.. rounds], parts.Length)),
            ],
            [.. parts[0].Weeds.Select((_, weed) => Mean([.. parts.Select(part => part.Weeds[weed])]))],
            Mean([.. parts.Select(part => part.Clearing)], parts.Length),
            parts[0].MaterialsUsdPerRound
        )
        {
            Course = new WeedingCourse(
                Mean([.. parts.Select(part => part.Course.Open)], parts.Length),
                Mean([.. parts.Select(part => part.Course.Room)], parts.Length),
                Mean([.. parts.Select(part => part.Course.Vigour)], parts.Length)
            ),
        };

    // A round that only some of the parts walk takes less for all pots together.
    private static WeedingRound Mean(ImmutableArray<WeedingRound> rounds, int parts) =>
        new(
            rounds[0].Week,
            rounds.Sum(round => round.WalkingHours) / parts,
            Mean([.. rounds.Select(round => round.PullingHours)], parts),
            Mean([.. rounds.Select(round => round.Pulled)], parts)
        );

    private static ImmutableArray<double> Mean(ImmutableArray<ImmutableArray<double>> rows, int parts) =>
        [.. rows[0].Select((_, i) => rows.Sum(row => row[i]) / parts)];

    private static WeedFate Mean(ImmutableArray<WeedFate> fates) =>
        new(
            fates[0].Weed,
            fates[0].Name,
            fates.Average(fate => fate.StandingAtStart),
            fates.Average(fate => fate.Emerged),
            fates.Average(fate => fate.Pulled),
            fates.Average(fate => fate.Dead),
            fates.Average(fate => fate.Standing),
            fates.Average(fate => fate.SeedsShed)
        )
        {
            SeedlingsToCome = fates.Average(fate => fate.SeedlingsToCome),
            GrewOld = fates.Average(fate => fate.GrewOld),
            GrewOvergrown = fates.Average(fate => fate.GrewOvergrown),
        };
}
