using System.Collections.Immutable;
using WeedAdvisor.Planning.Season.Search.Kernel;

namespace WeedAdvisor.Planning.Season.Search;

/// <summary>
/// The search for the cheapest season plan. It is exact: unless it is stopped early, no plan under the same limits and
/// wishes costs less. The same problem gives the same plan every time.
/// </summary>
/// <remarks>A search holds what it learned about its problem; use one from one thread at a time.</remarks>
public sealed class SeasonSearch
{
    private readonly SeasonSolver _solver;

    private SeasonSearch(SeasonProblem problem, SeasonSolver solver)
    {
        Problem = problem;
        _solver = solver;
    }

    /// <summary>The problem that is searched.</summary>
    public SeasonProblem Problem { get; }

    /// <summary>Prepares a search.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="near">The search of a similar problem, say before one change; what it learned makes this one
    /// faster.</param>
    /// <exception cref="ArgumentException">The problem has faults; <see cref="SeasonProblem.Faults"/> names
    /// them.</exception>
    public static SeasonSearch Prepare(SeasonProblem problem, SeasonSearch? near = null)
    {
        ImmutableArray<string> faults = problem.Faults();
        return faults.IsEmpty
            ? new SeasonSearch(problem, new SeasonSolver(SeasonCompiler.Of(problem), near?._solver))
            : throw new ArgumentException(string.Join("; ", faults), nameof(problem));
    }

    /// <summary>Searches for the cheapest plan.</summary>
    /// <param name="known">A plan that may still be good, say from before one change; it makes the search
    /// faster.</param>
    /// <param name="effort">How far to go; the usual effort when left out.</param>
    /// <param name="stop">Stops the search early: then the best plan so far comes back, with its bound and gap.</param>
    public SeasonAnswer Solve(
        SeasonPlan? known = null,
        SeasonEffort? effort = null,
        CancellationToken stop = default
    ) => SolveWithout([], known, effort, stop);

    /// <summary>Whether a plan keeps the limits and wishes of a problem.</summary>
    public static bool Allows(SeasonProblem problem, SeasonPlan plan) =>
        Prepare(problem) is var search
        && search.StepsOf(plan) is { } steps
        && new Replay(search._solver.Season).CostOf(steps) is not null;

    /// <summary>
    /// A plan of another problem with the same candidates at the costs of this one; null when it breaks a limit.
    /// </summary>
    /// <param name="plan">The plan.</param>
    public SeasonPlan? Recosted(SeasonPlan plan) =>
        StepsOf(plan) is { } steps && new Replay(_solver.Season).CostOf(steps) is { } cost
            ? Replay.PlanOf(_solver.Season, new Solution(steps, cost, cost, Proven: false, Made: 0))
            : null;

    /// <summary>Searches for the cheapest plan that has none of some sequences of candidates.</summary>
    internal SeasonAnswer SolveWithout(
        int[][] forbidden,
        SeasonPlan? known,
        SeasonEffort? effort,
        CancellationToken stop
    )
    {
        Solution solution = _solver.Solve(forbidden, StepsOf(known), (effort ?? new SeasonEffort()).Width, stop);
        bool infeasible = solution.Steps is null && solution.Proven;
        return new SeasonAnswer(
            solution.Steps is null ? null : Replay.PlanOf(_solver.Season, solution),
            infeasible,
            infeasible ? 0 : Units.ToMoney(solution.Bound),
            solution.Made
        );
    }

    // By name, because one change may have dropped or added a candidate.
    private PlanStep[]? StepsOf(SeasonPlan? plan)
    {
        if (plan is null)
            return null;
        var numbers = Problem
            .Candidates.Select((one, number) => (one.Name, number))
            .ToDictionary(StringComparer.Ordinal);
        return plan.Applications.All(one => numbers.ContainsKey(one.Name))
            ? [.. plan.Applications.Select(one => new PlanStep(numbers[one.Name], one.Week))]
            : null;
    }
}
