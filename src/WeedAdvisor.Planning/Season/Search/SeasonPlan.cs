using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Season.Search;

/// <summary>A year's applications and what they come to.</summary>
/// <param name="Applications">The applications, in order of week.</param>
/// <param name="ApplicationCost">What they cost together.</param>
/// <param name="EscapeCost">What hand weeding of the escapes costs.</param>
/// <param name="Control">Control of each weed in each week, 0 to 1: the greatest of what still acts.</param>
/// <param name="Bound">No plan under the same limits and wishes costs less than this.</param>
/// <param name="Proven">Whether no plan is cheaper; then the bound is the total.</param>
public sealed record SeasonPlan(
    ImmutableArray<SeasonApplication> Applications,
    decimal ApplicationCost,
    decimal EscapeCost,
    ImmutableArray<ImmutableArray<double>> Control,
    decimal Bound,
    bool Proven
)
{
    /// <summary>What the year costs: applications and escapes.</summary>
    public decimal Total => ApplicationCost + EscapeCost;

    /// <summary>By how much a better plan could still be cheaper; 0 when the plan is proven.</summary>
    public decimal Gap => Total - Bound;

    /// <summary>The weeks in which a weed that costs something is held less than asked.</summary>
    /// <param name="problem">The problem that the plan solves.</param>
    /// <param name="control">The control asked, 0 to 1.</param>
    /// <returns>The weed's index and the week, by weed and then week.</returns>
    public ImmutableArray<(int Weed, int Week)> Uncovered(SeasonProblem problem, double control = 0.5) =>
        [
            .. Control
                .SelectMany((weeks, weed) => weeks.Select((held, week) => (Weed: weed, Week: week, Held: held)))
                .Where(cell => cell.Held < control && problem.Weeds[cell.Weed].EscapeCost[cell.Week] > 0)
                .Select(cell => (cell.Weed, cell.Week)),
        ];
}

/// <summary>One application of a plan.</summary>
/// <param name="Week">The week it goes on.</param>
/// <param name="Candidate">The index of what goes on.</param>
/// <param name="Name">Its name.</param>
/// <param name="Cost">What it costs in that week.</param>
public sealed record SeasonApplication(int Week, int Candidate, string Name, decimal Cost);

/// <summary>What a search came to.</summary>
/// <param name="Plan">The best plan found; null when none was.</param>
/// <param name="Infeasible">Whether it is proven that no plan meets all limits and wishes.</param>
/// <param name="Bound">No plan costs less than this; 0 when infeasible.</param>
/// <param name="Labels">How many partial plans were looked at.</param>
public sealed record SeasonAnswer(SeasonPlan? Plan, bool Infeasible, decimal Bound, long Labels);

/// <summary>How far a search may go.</summary>
public sealed record SeasonEffort
{
    /// <summary>
    /// The most partial plans held at once. A search that would need more keeps the most promising ones, and says by
    /// its bound what it can no longer prove.
    /// </summary>
    public int Width { get; init; } = 30_000;
}
