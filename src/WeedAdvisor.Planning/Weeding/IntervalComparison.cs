using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>A wage below which another interval is cheapest than above it.</summary>
/// <param name="WageUsdPerHour">The wage at which both cost the same, US dollars an hour.</param>
/// <param name="BelowWeeks">The cheapest interval below it, weeks.</param>
/// <param name="AboveWeeks">The cheapest interval above it, weeks.</param>
public sealed record WageChange(double WageUsdPerHour, int BelowWeeks, int AboveWeeks);

/// <summary>The same plan at several intervals.</summary>
/// <param name="WageUsdPerHour">Cost of an hour, US dollars.</param>
/// <param name="Seasons">A season for each interval, shortest interval first.</param>
/// <param name="Cheapest">The season that costs least; of equal ones the longest interval.</param>
/// <param name="WageChanges">The wages at which the cheapest interval changes, lowest first.</param>
public sealed record IntervalComparison(
    double WageUsdPerHour,
    ImmutableArray<WeedingSeason> Seasons,
    WeedingSeason Cheapest,
    ImmutableArray<WageChange> WageChanges
)
{
    /// <summary>The intervals compared when none are named, weeks.</summary>
    public static ImmutableArray<int> UsualIntervals { get; } = [1, 2, 3, 4, 6, 8];

    /// <summary>Runs the plan at each interval; refused when plan, wage or an interval is wrong.</summary>
    /// <param name="plan">The plan; its own interval does not count.</param>
    /// <param name="intervals">Whole weeks, at least one of them.</param>
    /// <param name="wageUsdPerHour">Cost of an hour, US dollars, 0 or more.</param>
    public static Outcome<IntervalComparison, string> Of(
        WeedingPlan plan,
        IEnumerable<int> intervals,
        double wageUsdPerHour
    )
    {
        int[] weeks = [.. intervals.Distinct().Order()];
        if (weeks.Length == 0)
            return Outcome<IntervalComparison, string>.Bad("There is no interval to compare. Name one in whole weeks.");
        if (!Wage.IsInRange(wageUsdPerHour))
            return Outcome<IntervalComparison, string>.Bad(Wage.OutOfRange(wageUsdPerHour));
        Outcome<WeedingSeason, string>[] runs =
        [
            .. weeks.Select(interval => WeedingRun.Of(plan with { IntervalWeeks = interval, FirstRound = 0 })),
        ];
        if (runs.FirstOrDefault(run => !run.IsGood) is { } bad)
            return Outcome<IntervalComparison, string>.Bad(bad.Refusals);
        ImmutableArray<WeedingSeason> seasons = [.. runs.Select(run => run.Value!)];
        return Outcome<IntervalComparison, string>.Good(
            new(wageUsdPerHour, seasons, CheapestAt(seasons, wageUsdPerHour), Changes(seasons))
        );
    }

    private static WeedingSeason CheapestAt(ImmutableArray<WeedingSeason> seasons, double wage) =>
        seasons.OrderBy(season => season.CostUsd(wage)).ThenByDescending(season => season.IntervalWeeks).First();

    // Each cost is a line over the wage: the cheapest follow each other along the lower edge, each with fewer hours.
    private static ImmutableArray<WageChange> Changes(ImmutableArray<WeedingSeason> seasons)
    {
        var changes = ImmutableArray.CreateBuilder<WageChange>();
        WeedingSeason below = seasons.OrderBy(season => season.MaterialsUsd).ThenBy(season => season.Hours).First();
        while (true)
        {
            WeedingSeason from = below;
            (WeedingSeason Season, double Wage)[] next =
            [
                .. seasons
                    .Where(season => season.Hours < from.Hours)
                    .Select(season => (season, (season.MaterialsUsd - from.MaterialsUsd) / (from.Hours - season.Hours)))
                    .OrderBy(one => one.Item2)
                    .ThenBy(one => one.season.Hours),
            ];
            if (next.Length == 0)
                return changes.DrainToImmutable();
            below = next[0].Season;
            changes.Add(new WageChange(next[0].Wage, from.IntervalWeeks, below.IntervalWeeks));
        }
    }
}
