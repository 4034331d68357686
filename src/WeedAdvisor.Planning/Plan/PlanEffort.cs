namespace WeedAdvisor.Planning.Plan;

/// <summary>How far a plan is looked for.</summary>
public sealed record PlanEffort
{
    /// <summary>Standing choices whose preventives are searched in full, at most.</summary>
    public int MostSearched { get; init; } = 300;

    /// <summary>
    /// The gap, percent of the plan's price, at which the search is content: no other plan is cheaper by more.
    /// </summary>
    public decimal ContentPercent { get; init; } = YearPlanProven;

    private const decimal YearPlanProven = Season.Programme.YearPlan.ProvenPercent;
}

/// <summary>How far a plan has got.</summary>
/// <param name="Looked">Standing choices that were priced.</param>
/// <param name="Searched">Those of them whose preventives were searched.</param>
/// <param name="BestUsd">The price of the best plan so far, US dollars for 1000 pots.</param>
/// <param name="LeastUsd">No plan costs less than this.</param>
public sealed record PlanProgress(int Looked, int Searched, decimal BestUsd, decimal LeastUsd);
