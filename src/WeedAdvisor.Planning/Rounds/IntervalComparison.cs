using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Rounds;

/// <summary>A wage below which another interval is cheapest than above it.</summary>
/// <param name="WageUsdPerHour">The wage at which both cost the same, US dollars an hour.</param>
/// <param name="BelowWeeks">The cheapest interval below it, weeks.</param>
/// <param name="AboveWeeks">The cheapest interval above it, weeks.</param>
public sealed record WageChange(double WageUsdPerHour, int BelowWeeks, int AboveWeeks);

/// <summary>A season of rounds at one interval with what it costs, for 1000 pots.</summary>
/// <param name="Season">The season.</param>
/// <param name="Cost">What it costs at any wage.</param>
/// <param name="Usd">What it costs at the wage of the comparison, US dollars.</param>
public sealed record IntervalCost(WeedingSeason Season, CostAtWage Cost, decimal Usd);

/// <summary>The same year at several intervals.</summary>
/// <param name="WageUsd">Cost of an hour, US dollars.</param>
/// <param name="Intervals">The intervals, the shortest first.</param>
/// <param name="Cheapest">The one that costs least; of equal ones the longest interval.</param>
/// <param name="WageChanges">The wages at which the cheapest interval changes, lowest first.</param>
public sealed record IntervalComparison(
    decimal WageUsd,
    ImmutableArray<IntervalCost> Intervals,
    IntervalCost Cheapest,
    ImmutableArray<WageChange> WageChanges
)
{
    /// <summary>The intervals compared when none are named, weeks.</summary>
    public static ImmutableArray<int> UsualIntervals { get; } = [1, 2, 3, 4, 6, 8];

    /// <summary>
    /// Today's way through a year at each interval, with all that it costs: mulch and applications as they are today.
    /// Refused when a price is missing or there is no interval.
    /// </summary>
    /// <param name="year">The year.</param>
    /// <param name="intervals">Whole weeks, at least one of them.</param>
    public static Outcome<IntervalComparison, string> Of(YearCase year, IEnumerable<int> intervals) =>
        Of(year, intervals, Variation.None);

    internal static Outcome<IntervalComparison, string> Of(
        YearCase year,
        IEnumerable<int> intervals,
        Variation variation
    )
    {
        WayPlan today = WaysOfYear.Today(year);
        return Compared(intervals, year.WageUsd, interval =>
        {
            Outcome<Way, string> way = WayCosting.Of(year, WaysOfYear.At(today, interval), variation);
            return way.IsGood
                ? Good(way.Value.Season, CostAtWage.Of(way.Value.Items), way.Value.Usd)
                : Outcome<IntervalCost, string>.Bad(
                    way.Refusals.Select(why => $"Today's way cannot be reckoned: {why}.")
                );
        });
    }

    /// <summary>
    /// The rounds of a plan at each interval and nothing else: hours and materials. Refused when plan, wage or an
    /// interval is wrong.
    /// </summary>
    /// <param name="plan">The plan; its own interval does not count.</param>
    /// <param name="intervals">Whole weeks, at least one of them.</param>
    /// <param name="wageUsdPerHour">Cost of an hour, US dollars, 0 or more.</param>
    public static Outcome<IntervalComparison, string> Of(
        WeedingPlan plan,
        IEnumerable<int> intervals,
        double wageUsdPerHour
    )
    {
        if (!Wage.IsInRange(wageUsdPerHour))
            return Outcome<IntervalComparison, string>.Bad(Wage.OutOfRange(wageUsdPerHour));
        return Compared(intervals, (decimal)wageUsdPerHour, interval =>
        {
            Outcome<WeedingSeason, string> run = WeedingRun.Of(plan with { IntervalWeeks = interval });
            if (!run.IsGood)
                return Outcome<IntervalCost, string>.Bad(run.Refusals);
            var cost = new CostAtWage((decimal)run.Value.MaterialsUsd, (decimal)run.Value.Hours);
            return Good(run.Value, cost, cost.TotalUsd((decimal)wageUsdPerHour));
        });
    }

    private static Outcome<IntervalCost, string> Good(WeedingSeason season, CostAtWage cost, decimal usd) =>
        Outcome<IntervalCost, string>.Good(new IntervalCost(season, cost, usd));

    private static Outcome<IntervalComparison, string> Compared(
        IEnumerable<int> intervals,
        decimal wage,
        Func<int, Outcome<IntervalCost, string>> reckon
    )
    {
        int[] weeks = [.. intervals.Distinct().Order()];
        if (weeks.Length == 0)
            return Outcome<IntervalComparison, string>.Bad("There is no interval to compare. Name one in whole weeks.");
        Outcome<IntervalCost, string>[] runs = [.. weeks.Select(reckon)];
        if (runs.FirstOrDefault(run => !run.IsGood) is { } bad)
            return Outcome<IntervalComparison, string>.Bad(bad.Refusals);
        ImmutableArray<IntervalCost> costs = [.. runs.Select(run => run.Value!)];
        return Outcome<IntervalComparison, string>.Good(
            new(
                wage,
                costs,
                costs.OrderBy(one => one.Usd).ThenByDescending(one => one.Season.IntervalWeeks).First(),
                Changes(costs)
            )
        );
    }

    // Each cost is a line over the wage: the cheapest follow each other along the lower edge, each with fewer hours.
    private static ImmutableArray<WageChange> Changes(ImmutableArray<IntervalCost> costs)
    {
        var changes = ImmutableArray.CreateBuilder<WageChange>();
        IntervalCost below = costs.OrderBy(one => one.Cost.OtherUsd).ThenBy(one => one.Cost.Hours).First();
        while (true)
        {
            IntervalCost from = below;
            (IntervalCost Cost, decimal Wage)[] next =
            [
                .. costs
                    .Where(one => one.Cost.Hours < from.Cost.Hours)
                    .Select(one => (one, (one.Cost.OtherUsd - from.Cost.OtherUsd) / (from.Cost.Hours - one.Cost.Hours)))
                    .OrderBy(one => one.Item2)
                    .ThenBy(one => one.one.Cost.Hours),
            ];
            if (next.Length == 0)
                return changes.DrainToImmutable();
            below = next[0].Cost;
            changes.Add(new WageChange((double)next[0].Wage, from.Season.IntervalWeeks, below.Season.IntervalWeeks));
        }
    }
}
