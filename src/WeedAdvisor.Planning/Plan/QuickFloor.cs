using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Plan;

/// <summary>
/// A floor under every year with some standing measures that needs no search: each use saves at most what it saves when
/// it is the only one, of the limits only the distance between two uses and their number are kept, and all together
/// they hold back no more than the best of them does in each week.
/// </summary>
internal sealed class QuickFloor
{
    private readonly SeasonCase _season;
    private readonly double[][] _past;
    private readonly int[] _placeOf;
    private readonly int _apart;
    private readonly int _most;

    public QuickFloor(SeasonCase season)
    {
        YearCase year = season.Sums;
        _season = season;
        MostHeld = SeasonFloor.MostHeld(season);
        _past =
        [
            .. season.Weeds.Select(weed =>
            {
                double[] past = new double[year.Weeks];
                PastControl.Of(weed.Weed, year.Acting, year.Escapes, year.Weeks, year.Knowledge).CopyTo(past);
                return past;
            }),
        ];
        string[] ids = [.. year.Weeds.Counted.Select(weed => weed.Weed.Id)];
        _placeOf = [.. season.Weeds.Select(weed => Array.IndexOf(ids, weed.Weed.Id))];
        _apart = season.Problem.Limits.MinWeeksBetweenAny;
        _most = season.Problem.Wishes.AtMost ?? year.Weeks;
    }

    /// <summary>By weed of the year and week, the most that preventives can hold back.</summary>
    public double[][] MostHeld { get; }

    /// <summary>The floor, US dollars for 1000 pots.</summary>
    /// <param name="least">What seedlings cost at least.</param>
    /// <param name="most">How many uses there is money for at most; null where it is not limited.</param>
    public double Of(YearEscapes least, int? most = null)
    {
        int weeks = _season.Sums.Weeks;
        double[][] usd = [.. _placeOf.Select(place => least.Usd[place].ToArray())];
        double all = 0,
            held = 0;
        for (int weed = 0; weed < usd.Length; weed++)
        {
            for (int week = 0; week < weeks; week++)
            {
                held += usd[weed][week] * (1 - MostHeld[_placeOf[weed]][week]);
                usd[weed][week] *= 1 - _past[weed][week];
                all += usd[weed][week];
            }
        }

        double[] gain = new double[weeks];
        foreach (SeasonCandidate candidate in _season.Problem.Candidates)
        {
            for (int start = 0; start < weeks; start++)
            {
                if (_season.Problem.CostIn(candidate, start) is { } cost)
                    gain[start] = Math.Max(gain[start], Saved(candidate, start, usd) - (double)cost);
            }
        }

        return least.RestUsd + Math.Max(held, all - MostOfChain(gain, _apart, Math.Min(_most, most ?? _most)));
    }

    private static double Saved(SeasonCandidate candidate, int start, double[][] usd)
    {
        double saved = 0;
        for (int weed = 0; weed < usd.Length; weed++)
        {
            ReadOnlySpan<double> control = candidate.Control[weed].AsSpan();
            ReadOnlySpan<double> row = usd[weed].AsSpan(start);
            int length = Math.Min(control.Length, row.Length);
            for (int age = 0; age < length; age++)
                saved += control[age] * row[age];
        }

        return saved;
    }

    // The greatest sum of gains of so many weeks, each so far from the one before.
    private static double MostOfChain(double[] gain, int apart, int most)
    {
        double[] before = new double[gain.Length + 1];
        for (int uses = 0; uses < Math.Min(most, gain.Length); uses++)
        {
            double[] now = new double[gain.Length + 1];
            for (int week = gain.Length - 1; week >= 0; week--)
                now[week] = Math.Max(now[week + 1], gain[week] + before[Math.Min(gain.Length, week + apart)]);
            if (now[0] <= before[0])
                break;
            before = now;
        }

        return before[0];
    }
}
