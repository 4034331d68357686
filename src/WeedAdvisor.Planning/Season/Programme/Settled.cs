using System.Collections.Immutable;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Search;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// Finds a plan that is best where it stands itself. What a seedling costs hangs on how crowded the pots are and on
/// what holds its descendants, so on the plan: the search is made again at the costs of the plan it found, for as long
/// as the whole price of the year falls. Where a problem is tightened and searched again, it begins at the costs of the
/// last plan.
/// </summary>
/// <param name="season">The case.</param>
/// <param name="stop">Stops early.</param>
internal sealed class Settled(SeasonCase season, CancellationToken stop)
{
    private const int MostTries = 4;

    private ImmutableArray<SeasonWeed>? _there;

    /// <summary>The best plan found; null when no plan meets the wishes.</summary>
    /// <param name="search">The search, prepared for the case's problem or one that is tighter.</param>
    public SeasonPlan? Of(SeasonSearch search)
    {
        SeasonPlan? best = null;
        Way? bestWay = null;
        if (_there is { } weeds)
            search = SeasonSearch.Prepare(search.Problem with { Weeds = weeds }, search);
        SeasonPlan? plan = search.Solve(stop: stop).Plan;
        for (int tries = 0; plan is not null && tries < MostTries; tries++)
        {
            if (best is not null && plan.Applications.SequenceEqual(best.Applications))
                break;
            Way way = season.WayOf(plan.Applications);
            if (bestWay is not null && way.Usd >= bestWay.Usd)
                break;
            (best, bestWay) = (plan, way);
            SeasonProblem there = (season with { Problem = search.Problem }).At(way).Problem;
            _there = there.Weeds;
            search = SeasonSearch.Prepare(there, search);
            plan = search.Solve(plan, stop: stop).Plan;
        }

        return best ?? plan;
    }
}
