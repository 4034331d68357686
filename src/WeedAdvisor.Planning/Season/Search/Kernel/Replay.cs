using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>A list of applications, carried out under the limits of a problem.</summary>
internal static class Replay
{
    /// <summary>What the plan costs; null when it breaks a limit or misses a need.</summary>
    public static long? CostOf(CompiledSeason season, IReadOnlyList<PlanStep> steps)
    {
        var labels = new LabelStore(season);
        int label = labels.TakeRoot(forbidden: 0), week = -1;
        foreach (PlanStep step in steps)
        {
            if (step.Week <= week || step.Week >= season.Weeks || step.Candidate >= season.Candidates
                || !labels.Allows(label, step.Candidate, step.Week))
                return null;
            week = step.Week;
            label = labels.TakeNext(label, step.Candidate, step.Week);
        }
        return labels.MeetsNeeds(label) ? labels.Cost[label] : null;
    }

    /// <summary>The plan in the words of the problem.</summary>
    public static SeasonPlan PlanOf(CompiledSeason season, Solution solution)
    {
        SeasonProblem problem = season.Problem;
        PlanStep[] steps = solution.Steps ?? throw new ArgumentException("there is no plan", nameof(solution));
        long spent = steps.Sum(step => season.Cost[(step.Candidate * season.Weeks) + step.Week]);
        return new SeasonPlan(
            [
                .. steps.Select(step => new SeasonApplication(
                    step.Week,
                    step.Candidate,
                    problem.Candidates[step.Candidate].Name,
                    Units.ToMoney(season.Cost[(step.Candidate * season.Weeks) + step.Week]))),
            ],
            Units.ToMoney(spent),
            Units.ToMoney(solution.Cost - spent),
            ControlOf(problem, steps),
            Units.ToMoney(solution.Bound),
            solution.Proven);
    }

    private static ImmutableArray<ImmutableArray<double>> ControlOf(SeasonProblem problem, PlanStep[] steps)
    {
        (int Week, SeasonCandidate Used)[] uses =
        [
            .. problem.History.Select(past => (past.Week, past.Used)),
            .. steps.Select(step => (step.Week, problem.Candidates[step.Candidate])),
        ];
        return
        [
            .. Enumerable.Range(0, problem.Weeds.Length).Select(weed => Enumerable.Range(0, problem.Weeks)
                .Select(week => uses.Select(use => At(use.Used.Control[weed], week - use.Week)).DefaultIfEmpty().Max())
                .ToImmutableArray()),
        ];
    }

    private static double At(ImmutableArray<double> control, int age) =>
        age >= 0 && age < control.Length ? control[age] : 0;
}
