using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>A list of applications, carried out under the limits of a problem.</summary>
internal sealed class Replay(CompiledSeason season)
{
    private readonly LabelStore _labels = new(season);

    /// <summary>What the plan costs; null when it breaks a limit or, unless more may follow, misses a need.</summary>
    public long? CostOf(IReadOnlyList<PlanStep> steps, bool mayGoOn = false)
    {
        int label = _labels.TakeRoot(forbidden: 0),
            week = -1;
        bool allowed = true;
        foreach (PlanStep step in steps)
        {
            allowed =
                step.Week > week
                && step.Week < season.Weeks
                && step.Candidate < season.Candidates
                && _labels.Allows(label, step.Candidate, step.Week);
            if (!allowed)
                break;
            week = step.Week;
            int next = _labels.TakeNext(label, step.Candidate, step.Week);
            _labels.Drop(label);
            label = next;
        }
        long? cost = allowed && (mayGoOn || _labels.MeetsNeeds(label)) ? _labels.Cost[label] : null;
        _labels.Drop(label);
        return cost;
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
                    Units.ToMoney(season.Cost[(step.Candidate * season.Weeks) + step.Week])
                )),
            ],
            Units.ToMoney(spent),
            Units.ToMoney(solution.Cost - spent),
            ControlOf(problem, steps),
            Units.ToMoney(solution.Bound),
            solution.Proven
        );
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
            .. Enumerable
                .Range(0, problem.Weeds.Length)
                .Select(weed =>
                    Enumerable
                        .Range(0, problem.Weeks)
                        .Select(week =>
                            uses.Select(use => At(use.Used.Control[weed], week - use.Week)).DefaultIfEmpty().Max()
                        )
                        .ToImmutableArray()
                ),
        ];
    }

    private static double At(ImmutableArray<double> control, int age) =>
        age >= 0 && age < control.Length ? control[age] : 0;
}
