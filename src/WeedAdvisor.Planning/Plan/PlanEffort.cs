using System.Collections.Immutable;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Programme;

namespace WeedAdvisor.Planning.Plan;

/// <summary>How far a plan is looked for.</summary>
public sealed record PlanEffort
{
    /// <summary>Standing choices whose preventives are searched in full, at most.</summary>
    public int MostSearched { get; init; } = 3000;

    /// <summary>
    /// The gap, percent of the plan's price, at which the search is content: no other plan is cheaper by more.
    /// </summary>
    public decimal ContentPercent { get; init; } = YearPlan.ProvenPercent;

    /// <summary>The only rounds that are looked at; empty for all.</summary>
    public ImmutableArray<YearRounds> Rounds { get; init; } = [];

    /// <summary>
    /// Whether ways are looked for in which the first round is spread over weeks, where other areas share the hours.
    /// </summary>
    public bool SpreadsFirstRounds { get; init; }

    /// <summary>Told how far the search is; null when nobody listens.</summary>
    public IProgress<PlanProgress>? Progress { get; init; }
}

/// <summary>How far the search for a plan is. Money is US dollars for all pots.</summary>
/// <param name="Choices">Rounds and measures to look at.</param>
/// <param name="Searched">Those whose preventives have been searched.</param>
/// <param name="BestUsd">The cheapest plan so far; null when there is none yet.</param>
/// <param name="LeastUsd">What no plan costs less than; null when that is not known yet.</param>
public sealed record PlanProgress(int Choices, int Searched, decimal? BestUsd, decimal? LeastUsd);
