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
}
