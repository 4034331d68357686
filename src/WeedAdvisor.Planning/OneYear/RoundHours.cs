using System.Collections.Immutable;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>What the rounds of a part of the year take, for all pots.</summary>
/// <param name="Part">The part of the year.</param>
/// <param name="Rounds">How many rounds are walked in it.</param>
/// <param name="HoursAWeek">Hours of rounds in a week of it, on the average of all its weeks.</param>
/// <param name="LongestHours">Hours of its longest round; 0 where none is walked.</param>
public sealed record RoundHours(PartOfYear Part, int Rounds, decimal HoursAWeek, decimal LongestHours)
{
    private const decimal Thousand = 1000;

    /// <summary>The parts of the year that a way has weeks in, in the order of the year.</summary>
    /// <param name="year">The year.</param>
    /// <param name="way">The way, reckoned.</param>
    public static ImmutableArray<RoundHours> Of(YearCase year, Way way)
    {
        ILookup<PartOfYear, WeedingRound> rounds = way.Season.Rounds.ToLookup(round =>
            YearWeeding.PartOf(year, round.Week)
        );
        return
        [
            .. Enumerable
                .Range(0, year.Weeks)
                .GroupBy(week => YearWeeding.PartOf(year, week))
                .OrderBy(weeks => weeks.Key)
                .Select(weeks => new RoundHours(
                    weeks.Key,
                    rounds[weeks.Key].Count(),
                    All(rounds[weeks.Key].Sum(round => round.Hours)) / weeks.Count(),
                    All(rounds[weeks.Key].Select(round => round.Hours).DefaultIfEmpty(0).Max())
                )),
        ];

        decimal All(double hours) => (decimal)hours * year.Pots / Thousand;
    }
}
