using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>
/// The weeks in which a round is walked. Rounds rest when no weed of the list has come up for some weeks, and begin
/// again with the season.
/// </summary>
public static class RoundSchedule
{
    private const int LeastWeeksAfterSeason = 6,
        RoundsAfterSeason = 2;

    /// <summary>
    /// Weeks for which rounds go on after the last weed of the list has stopped coming up: six, or two rounds if that
    /// is longer.
    /// </summary>
    public static int WeeksAfterSeason(int intervalWeeks) =>
        Math.Max(LeastWeeksAfterSeason, RoundsAfterSeason * intervalWeeks);

    /// <summary>The rounds of a plan: those it names, else those of its interval.</summary>
    public static ImmutableArray<int> Of(WeedingPlan plan) =>
        plan.RoundWeeks
        ??
        [
            .. Walkable(plan.Weeds, plan.FirstWeek, plan.Weeks, _ => plan.IntervalWeeks)
                .Where(week => week % plan.IntervalWeeks == 0),
        ];

    /// <summary>
    /// Rounds whose interval changes through the year: the first in week 0, each next when the interval of its own week
    /// has gone by since the one before. A round that falls into the weeks of rest is left out.
    /// </summary>
    /// <param name="weeds">The weeds.</param>
    /// <param name="firstWeek">The week of the year in which the plan starts, 0 to 51.</param>
    /// <param name="weeks">How many weeks it lasts.</param>
    /// <param name="intervalOf">Weeks between rounds in a week of the plan; null where nobody walks.</param>
    public static ImmutableArray<int> Changing(
        ImmutableArray<PlannedWeed> weeds,
        int firstWeek,
        int weeks,
        Func<int, int?> intervalOf
    )
    {
        HashSet<int> walkable = [.. Walkable(weeds, firstWeek, weeks, week => intervalOf(week) ?? 1)];
        var rounds = ImmutableArray.CreateBuilder<int>();
        int? last = null;
        for (int week = 0; week < weeks; week++)
        {
            if (intervalOf(week) is not { } interval || (last is { } before && week - before < interval))
                continue;
            last = week;
            if (walkable.Contains(week))
                rounds.Add(week);
        }

        return rounds.DrainToImmutable();
    }

    // Before the first round, and as long after the season as a round may still find what came up in it.
    private static IEnumerable<int> Walkable(
        ImmutableArray<PlannedWeed> weeds,
        int firstWeek,
        int weeks,
        Func<int, int> intervalOf
    )
    {
        int lastInSeason = 0;
        for (int week = 0; week < weeks; week++)
        {
            int ofYear = (firstWeek + week) % WeedTraits.WeeksInYear;
            if (weeds.Any(weed => weed.Traits.WeekShare[ofYear] > 0))
                lastInSeason = week;
            if (week - lastInSeason <= WeeksAfterSeason(intervalOf(week)))
                yield return week;
        }
    }
}
