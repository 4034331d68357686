using WeedAdvisor.Planning.Season.Search;

namespace WeedAdvisor.Planning.Tests.Season.Support;

/// <summary>
/// The rules of a season and the cost of a plan, written straight from their wording, without the kernel.
/// </summary>
internal static class SeasonRules
{
    /// <summary>The rules that applications break, whatever may come after them.</summary>
    public static IEnumerable<string> Broken(SeasonProblem problem, IReadOnlyList<(int Week, int Candidate)> plan)
    {
        List<(int Week, SeasonCandidate Used)> all = AllUses(problem, plan);
        for (int later = problem.History.Length; later < all.Count; later++)
        {
            (int week, SeasonCandidate used) = all[later];
            if (
                week < 0
                || week >= problem.Weeks
                || used.Cost[week] is null
                || problem.Wishes.ClosedWeeks.Contains(week)
            )
                yield return $"closed week {week}";
            if (problem.Wishes.Dropped.Contains(used.Name))
                yield return $"dropped {used.Name}";
            foreach ((int before, SeasonCandidate earlier) in all.Take(later))
            {
                bool related =
                    earlier.Name == used.Name
                    || earlier.Actives.Select(a => a.Active).Intersect(used.Actives.Select(a => a.Active)).Any();
                if (week - before < problem.Limits.MinWeeksBetweenAny)
                    yield return $"too close to any other: {week}";
                if (related && week - before < Math.Max(earlier.MinWeeksBetween, used.MinWeeksBetween))
                    yield return $"interval of {used.Name}: {week}";
            }
            foreach ((int before, SeasonCandidate earlier) in all.Take(later).Skip(problem.History.Length))
            {
                if (
                    problem.Gaps.Any(gap =>
                        gap.Before == earlier.Name && gap.After == used.Name && week - before < gap.Weeks
                    )
                )
                    yield return $"gap before {used.Name}: {week}";
            }
        }
        if (problem.Limits.MaxRunOfSite is { } most)
        {
            foreach (string site in problem.Candidates.SelectMany(one => one.Sites).Distinct())
            {
                for (int last = problem.History.Length; last < all.Count; last++)
                {
                    if (
                        last >= most
                        && Enumerable.Range(last - most, most + 1).All(at => all[at].Used.Sites.Contains(site))
                    )
                        yield return $"run of {site}";
                }
            }
        }
        SeasonCandidate[] own = [.. plan.Select(use => problem.Candidates[use.Candidate])];
        foreach (ActiveLimit limit in problem.Limits.Yearly)
        {
            decimal given = own.SelectMany(one => one.Actives).Where(a => a.Active == limit.Active).Sum(a => a.KgPerHa);
            if (given > 0 && given + limit.KgUsedBefore > limit.KgPerHa)
                yield return $"yearly limit of {limit.Active}";
        }
        foreach (SeasonCandidate one in problem.Candidates)
        {
            int uses = own.Count(other => other.Name == one.Name);
            if (uses > 0 && uses + one.UsesBefore > one.MaxUsesPerYear)
                yield return $"uses of {one.Name}";
        }
        if (problem.Limits.Spending is { } spending && own.Sum(one => spending.Each[one.Name]) > spending.Most)
            yield return "spending";
        if (plan.Sum(use => problem.Candidates[use.Candidate].Cost[use.Week]) > problem.Wishes.Budget)
            yield return "budget";
        if (plan.Count > problem.Wishes.AtMost)
            yield return "at most";
    }

    /// <summary>What a whole plan fails to do.</summary>
    public static IEnumerable<string> Missed(SeasonProblem problem, IReadOnlyList<(int Week, int Candidate)> plan)
    {
        SeasonCandidate[] own = [.. plan.Select(use => problem.Candidates[use.Candidate])];
        if (plan.Count < problem.Wishes.AtLeast)
            yield return "at least";
        foreach (string name in problem.Wishes.MustUse.Where(name => own.All(one => one.Name != name)))
            yield return $"must use {name}";
        foreach (CoverWish wish in problem.Wishes.MustCover)
        {
            int weed = problem.Weeds.Select(one => one.Name).ToList().IndexOf(wish.Weed);
            for (int week = wish.From; week <= wish.To; week++)
            {
                if (Control(problem, plan, weed, week) < wish.Control)
                    yield return $"cover {wish.Weed} in {week}";
            }
        }
        if (problem.Limits.MaxShareOfSite is { } share)
        {
            foreach (string site in own.SelectMany(one => one.Sites).Distinct())
            {
                if (own.Count(one => one.Sites.Contains(site)) > Math.Max(1, Math.Floor(share * own.Length)))
                    yield return $"share of {site}";
            }
        }
    }

    /// <summary>The cost of a plan, with what is saved in each cell rounded to hundredths of a cent.</summary>
    public static decimal Cost(SeasonProblem problem, IReadOnlyList<(int Week, int Candidate)> plan) =>
        plan.Sum(use => problem.Candidates[use.Candidate].Cost[use.Week]!.Value)
        + problem
            .Weeds.Select(
                (weed, index) =>
                    weed
                        .EscapeCost.Select(
                            (escape, week) => escape - Saved(escape, Control(problem, plan, index, week))
                        )
                        .Sum()
            )
            .Sum();

    /// <summary>What a control saves of an escape cost.</summary>
    public static decimal Saved(decimal escape, double control) =>
        (decimal)Math.Round((double)(escape * 10_000m) * control) / 10_000m;

    /// <summary>The greatest control of whatever acts.</summary>
    public static double Control(
        SeasonProblem problem,
        IReadOnlyList<(int Week, int Candidate)> plan,
        int weed,
        int week
    )
    {
        double best = 0;
        foreach ((int applied, SeasonCandidate used) in AllUses(problem, plan))
        {
            int age = week - applied;
            if (age >= 0 && age < used.Control[weed].Length)
                best = Math.Max(best, used.Control[weed][age]);
        }
        return best;
    }

    /// <summary>A plan as weeks and candidates.</summary>
    public static List<(int Week, int Candidate)> Steps(SeasonPlan plan) =>
        [.. plan.Applications.Select(one => (one.Week, one.Candidate))];

    private static List<(int Week, SeasonCandidate Used)> AllUses(
        SeasonProblem problem,
        IReadOnlyList<(int Week, int Candidate)> plan
    ) =>
        [
            .. problem.History.Select(past => (past.Week, past.Used)),
            .. plan.Select(use => (use.Week, problem.Candidates[use.Candidate])),
        ];
}
