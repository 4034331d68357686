using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.Season.Search;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// Finds a plan that is best where it stands itself. What a seedling costs hangs on how crowded the pots are and on what
/// holds its descendants, so on the plan: the search is made again at the costs of the plan it found, for as long as
/// the whole price of the year falls.
/// </summary>
internal static class Settled
{
    private const int MostTries = 4;

    /// <summary>The best plan found; null when no plan meets the wishes.</summary>
    /// <param name="season">The case.</param>
    /// <param name="search">The search, prepared for its problem or one that is tighter.</param>
    /// <param name="stop">Stops early.</param>
    public static SeasonPlan? Of(SeasonCase season, SeasonSearch search, CancellationToken stop)
    {
        SeasonPlan? best = null;
        Way? bestWay = null;
        SeasonPlan? plan = search.Solve(stop: stop).Plan;
        for (int tries = 0; plan is not null && tries < MostTries; tries++)
        {
            Way way = season.WayOf(plan.Applications);
            if (bestWay is not null && way.Usd >= bestWay.Usd)
                break;
            (best, bestWay) = (plan, way);
            SeasonProblem there = (season with { Problem = search.Problem }).At(way).Problem;
            plan = SeasonSearch.Prepare(there, search).Solve(plan, stop: stop).Plan;
        }

        return best ?? plan;
    }
}
