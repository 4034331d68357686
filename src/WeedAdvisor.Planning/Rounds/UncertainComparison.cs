using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Rounds;

/// <summary>Three points of what was drawn.</summary>
/// <param name="Low">A tenth of the draws lie below.</param>
/// <param name="Middle">Half of the draws lie below.</param>
/// <param name="High">Nine tenths of the draws lie below.</param>
public sealed record DrawnBand(double Low, double Middle, double High)
{
    /// <summary>The band of some draws, at least one; between two draws it is taken to run straight.</summary>
    internal static DrawnBand Of(IEnumerable<double> draws)
    {
        double[] ordered = [.. draws.Order()];
        return new DrawnBand(At(0.1), At(0.5), At(0.9));

        double At(double share)
        {
            double place = share * (ordered.Length - 1);
            int below = (int)place;
            int above = Math.Min(below + 1, ordered.Length - 1);
            return ordered[below] + ((place - below) * (ordered[above] - ordered[below]));
        }
    }
}

/// <summary>One interval when the inputs are uncertain, for 1000 pots.</summary>
/// <param name="IntervalWeeks">Weeks between rounds.</param>
/// <param name="Hours">Hours, the clearing at the end among them.</param>
/// <param name="CostUsd">Cost, US dollars.</param>
/// <param name="CheapestShare">Share of the draws in which this interval was the cheapest, 0 to 1.</param>
public sealed record UncertainInterval(int IntervalWeeks, DrawnBand Hours, DrawnBand CostUsd, double CheapestShare);

/// <summary>
/// Compares intervals when the parameters and the age at first seed may lie anywhere in their ranges.
/// </summary>
public static class UncertainComparison
{
    /// <summary>Draws when nothing else is said.</summary>
    public const int UsualDraws = 200;

    /// <summary>The most draws.</summary>
    public const int MostDraws = 10_000;

    /// <summary>
    /// The band of each interval, shortest interval first. All intervals meet the same draws, so they can be compared.
    /// The same seed gives the same figures.
    /// </summary>
    /// <param name="year">The year; numbers of the weeding model that differ from the knowledge's are taken as
    /// certain.</param>
    /// <param name="intervals">Whole weeks, at least one of them.</param>
    /// <param name="seed">Any number.</param>
    /// <param name="draws">How many draws, 1 to <see cref="MostDraws"/>.</param>
    public static Outcome<ImmutableList<UncertainInterval>, string> Of(
        YearCase year,
        IReadOnlyCollection<int> intervals,
        ulong seed,
        int draws = UsualDraws
    )
    {
        if (draws is < 1 or > MostDraws)
            return Outcome<ImmutableList<UncertainInterval>, string>.Bad($"There are 1 to {MostDraws} draws.");
        var generator = new DrawnNumbers(seed);
        var drawn = new List<IntervalComparison>(draws);
        for (int draw = 0; draw < draws; draw++)
        {
            Outcome<IntervalComparison, string> one = IntervalComparison.Of(Drawn(year, generator), intervals);
            if (!one.IsGood)
                return Outcome<ImmutableList<UncertainInterval>, string>.Bad(one.Refusals);
            drawn.Add(one.Value);
        }

        return Outcome<ImmutableList<UncertainInterval>, string>.Good([
            .. drawn[0].Intervals.Select((one, place) => Banded(one.Season.IntervalWeeks, place, drawn)),
        ]);
    }

    private static YearCase Drawn(YearCase year, DrawnNumbers generator)
    {
        WeedingNumbers numbers = year.UsualSize.Drawn(year.Knowledge, generator);
        var firstSeed = new Dictionary<string, decimal?>(StringComparer.Ordinal);
        foreach (YearWeed weed in year.Weeds.Counted)
        {
            Span? weeks = weed.Weed.WeeksToFirstSeed;
            double share = generator.Next();
            firstSeed[weed.Weed.Id] = weeks is { } span ? span.Low + ((decimal)share * (span.High - span.Low)) : null;
        }

        return year.With(numbers, weed => firstSeed.GetValueOrDefault(weed.Id) ?? weed.WeeksToFirstSeed?.Middle);
    }

    private static UncertainInterval Banded(int interval, int place, List<IntervalComparison> drawn) =>
        new(
            interval,
            DrawnBand.Of(drawn.Select(one => one.Intervals[place].Season.Hours)),
            DrawnBand.Of(drawn.Select(one => (double)one.Intervals[place].Usd)),
            drawn.Count(one => one.Cheapest.Season.IntervalWeeks == interval) / (double)drawn.Count
        );
}
