using System.Collections.Immutable;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>The rounds of a way through a year, as the weeding model runs them.</summary>
internal static class YearWeeding
{
    private const int DaysInWeek = 7;

    private static readonly ImmutableArray<string> s_pullTimes =
    [
        "pull-seconds-under-2-5-cm",
        "pull-seconds-from-2-5-to-5-cm",
        "pull-seconds-from-5-to-10-cm",
        "pull-seconds-from-10-to-20-cm",
        "pull-seconds-over-20-cm",
    ];

    /// <summary>The plan of rounds of a way.</summary>
    public static WeedingPlan Of(YearCase year, WayPlan way, Variation variation) =>
        Of(year, way.Rounds, variation, weed => WayControl.Of(year, way, weed, variation), way.FirstRoundWeek);

    /// <summary>The plan of rounds under some control of each weed.</summary>
    public static WeedingPlan Of(
        YearCase year,
        YearRounds rounds,
        Variation variation,
        Func<YearWeed, ImmutableArray<double>> controlOf,
        int firstRound = 0
    )
    {
        WeedingNumbers numbers =
            variation.PullTime == 1
                ? year.Numbers
                : s_pullTimes.Aggregate(year.Numbers, (all, id) => all.With(id, all[id] * variation.PullTime));
        ImmutableArray<PlannedWeed> weeds =
        [
            .. year.Weeds.Counted.Select(weed => Pressed(weed.Under(controlOf(weed)), variation.Pressure)),
        ];
        int first = WeedTraits.WeekOf(year.Day);
        return new WeedingPlan
        {
            Weeds = weeds,
            FirstWeek = first,
            Weeks = year.Weeks,
            IntervalWeeks = rounds.Spring ?? rounds.Summer ?? rounds.AutumnAndWinter ?? WeedingPlan.LongestInterval,
            RoundWeeks = From(
                RoundSchedule.Changing(weeds, first, year.Weeks, week => rounds.In(PartOf(year, week))),
                firstRound
            ),
            Missed = numbers.Missed,
            SmallestPulledCm = numbers.SmallestPulledCm,
            Numbers = numbers,
        };
    }

    // Where no round is walked in the first week there is none to put off.
    private static ImmutableArray<int> From(ImmutableArray<int> rounds, int first) =>
        first > 0 && rounds is [0, ..] ? [first, .. rounds.Where(week => week > first)] : rounds;

    /// <summary>The part of the year in which a week of the plan lies.</summary>
    public static PartOfYear PartOf(YearCase year, int week) =>
        PartsOfYear.Of(year.Day.AddDays(DaysInWeek * week), year.Site.Hemisphere);

    private static PlannedWeed Pressed(PlannedWeed weed, double pressure) =>
        pressure == 1
            ? weed
            : weed with
            {
                Traits = weed.Traits with { SeedlingsPerYear = weed.Traits.SeedlingsPerYear * pressure },
            };
}
