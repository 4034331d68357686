using WeedAdvisor.Planning.Season.Search;

namespace WeedAdvisor.Planning.Tests.Season.Support;

/// <summary>Looks at every plan that keeps the rules. For small problems only.</summary>
internal static class ExhaustiveSearch
{
    /// <summary>
    /// The lowest cost of each sequence of candidates, cheapest first; empty when no plan keeps all rules.
    /// </summary>
    public static List<(string Sequence, decimal Cost)> BestOfEachSequence(SeasonProblem problem)
    {
        var best = new Dictionary<string, decimal>();
        var plan = new List<(int Week, int Candidate)>();
        Extend(0);
        return [.. best.Select(one => (one.Key, one.Value)).OrderBy(one => one.Value)];

        void Extend(int week)
        {
            if (week == problem.Weeks)
            {
                if (SeasonRules.Missed(problem, plan).Any())
                    return;
                decimal cost = SeasonRules.Cost(problem, plan);
                string sequence = SequenceOf(plan.Select(use => use.Candidate));
                best[sequence] = Math.Min(cost, best.GetValueOrDefault(sequence, decimal.MaxValue));
                return;
            }
            Extend(week + 1);
            for (int candidate = 0; candidate < problem.Candidates.Length; candidate++)
            {
                plan.Add((week, candidate));
                if (!SeasonRules.Broken(problem, plan).Any())
                    Extend(week + 1);
                plan.RemoveAt(plan.Count - 1);
            }
        }
    }

    /// <summary>A sequence of candidates as a word.</summary>
    public static string SequenceOf(IEnumerable<int> candidates) => string.Join(' ', candidates);
}
