using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// What a year costs at least, whatever preventives go on: the best plan of the search at the least that each seedling
/// can cost under the standing measures, and what the year costs besides.
/// </summary>
internal static class SeasonFloor
{
    // The search counts in hundredths of a cent, and rounds what is saved in a week once.
    private const decimal RoundingUsd = 0.1m;

    // A floor need not be the highest: what a narrower search leaves out makes it lower, never wrong.
    private static readonly SeasonEffort s_effort = new() { Width = 1000 };

    /// <summary>The floor, US dollars for 1000 pots; null when no plan meets the wishes.</summary>
    /// <param name="season">The case, before the rules tightened it.</param>
    /// <param name="bare">Its standing measures with no preventive, reckoned.</param>
    /// <param name="stop">Stops early: the floor is lower then, and still one.</param>
    public static decimal? Of(SeasonCase season, Way bare, CancellationToken stop) =>
        Of(season, YearEscapes.Least(season.Sums, bare, MostHeld(season)), stop);

    /// <summary>The same with what seedlings cost at least.</summary>
    public static decimal? Of(SeasonCase season, YearEscapes least, CancellationToken stop)
    {
        SeasonProblem problem = season.WithEscapes(WeedPressure.At(season.Weeds, season.Sums, least));
        SeasonAnswer answer = SeasonSearch.Prepare(problem).Solve(effort: s_effort, stop: stop);
        return answer.Infeasible ? null : (decimal)least.RestUsd + answer.Bound - RoundingUsd;
    }

    /// <summary>By weed of the year and week, the most that preventives can hold back, those of the past among
    /// them.</summary>
    public static double[][] MostHeld(SeasonCase season)
    {
        YearCase year = season.Sums;
        return [.. year.Weeds.Counted.Select(weed => MostHeld(season, weed))];
    }

    private static double[] MostHeld(SeasonCase season, YearWeed weed)
    {
        YearCase year = season.Sums;
        double[] most = new double[year.Weeks];
        PastControl.Of(weed.Weed, year.Acting, year.Escapes, year.Weeks, year.Knowledge).CopyTo(most);
        int place = season.Weeds.Select(one => one.Weed.Id).ToList().IndexOf(weed.Weed.Id);
        if (place < 0)
            return most;
        foreach (SeasonCandidate candidate in season.Problem.Candidates)
        {
            var control = candidate.Control[place];
            for (int start = 0; start < most.Length; start++)
            {
                if (season.Problem.CostIn(candidate, start) is null)
                    continue;
                for (int age = 0; age < control.Length && start + age < most.Length; age++)
                    most[start + age] = Math.Max(most[start + age], control[age]);
            }
        }

        return most;
    }
}
