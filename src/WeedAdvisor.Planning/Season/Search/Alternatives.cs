using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Season.Search;

/// <summary>
/// The best plans that differ from the best one in more than weeks: each has another sequence of candidates.
/// </summary>
/// <param name="Plans">The runners-up, cheapest first; the best plan is not among them.</param>
/// <param name="Proven">
/// Whether it is proven that no plan with any other sequence is cheaper than these, and that there are no more when
/// there are fewer than asked for.
/// </param>
public sealed record Alternatives(ImmutableArray<SeasonPlan> Plans, bool Proven)
{
    private const int Most = 20;

    /// <summary>Searches again and again, each time without the sequences found so far.</summary>
    /// <param name="search">The search that found the best plan.</param>
    /// <param name="best">The best plan.</param>
    /// <param name="count">How many runners-up are wanted, 1 to 20.</param>
    /// <param name="effort">How far each search may go.</param>
    /// <param name="stop">Stops early.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1 or more than 20 are asked for.</exception>
    public static Alternatives Of(
        SeasonSearch search,
        SeasonPlan best,
        int count = 3,
        SeasonEffort? effort = null,
        CancellationToken stop = default
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, Most);
        var plans = ImmutableArray.CreateBuilder<SeasonPlan>();
        var sequences = new List<int[]> { SequenceOf(best) };
        bool proven = best.Proven;
        while (plans.Count < count)
        {
            SeasonAnswer answer = search.SolveWithout([.. sequences], null, effort, stop);
            proven &= answer.Infeasible || answer.Plan is { Proven: true };
            if (answer.Plan is not { } plan)
                break;
            plans.Add(plan);
            sequences.Add(SequenceOf(plan));
        }
        return new Alternatives(plans.ToImmutable(), proven);
    }

    private static int[] SequenceOf(SeasonPlan plan) => [.. plan.Applications.Select(one => one.Candidate)];
}
