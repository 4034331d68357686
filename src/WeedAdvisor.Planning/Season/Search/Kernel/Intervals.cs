namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>The weeks that must lie between two applications.</summary>
internal sealed class Intervals
{
    /// <summary>Works out all pairs.</summary>
    public Intervals(SeasonProblem problem, SiteNumbers sites)
    {
        int count = problem.Candidates.Length;
        Delay = new int[count * count];
        NextDelay = new int[count * count];
        Ready = new byte[count];
        var gaps = problem
            .Gaps.GroupBy(gap => (gap.Before, gap.After))
            .ToDictionary(group => group.Key, group => group.Max(gap => gap.Weeks));
        for (int to = 0; to < count; to++)
        {
            SeasonCandidate later = problem.Candidates[to];
            for (int from = 0; from < count; from++)
            {
                int delay = Math.Max(
                    Between(problem.Candidates[from], later, problem.Limits.MinWeeksBetweenAny),
                    gaps.GetValueOrDefault((problem.Candidates[from].Name, later.Name))
                );
                bool mustRotate = problem.Limits.MaxRunOfSite == 1 && sites.Of[from].Intersect(sites.Of[to]).Any();
                bool onlyOnce = from == to && later.MaxUsesPerYear - later.UsesBefore <= 1;
                Delay[(from * count) + to] = delay;
                NextDelay[(from * count) + to] = mustRotate || onlyOnce ? CompiledSeason.Never : delay;
            }
            Ready[to] = (byte)
                problem
                    .History.Select(past => past.Week + Between(past.Used, later, problem.Limits.MinWeeksBetweenAny))
                    .Append(0)
                    .Max();
        }
    }

    /// <summary>Weeks from one candidate to another: from x candidates + to.</summary>
    public int[] Delay { get; }

    /// <summary>The same when the other follows at once.</summary>
    public int[] NextDelay { get; }

    /// <summary>The first week that the past leaves open to each candidate.</summary>
    public byte[] Ready { get; }

    private static int Between(SeasonCandidate earlier, SeasonCandidate later, int any)
    {
        bool related =
            earlier.Name == later.Name
            || earlier.Actives.Any(one => later.Actives.Any(other => other.Active == one.Active));
        return related ? Math.Max(any, Math.Max(earlier.MinWeeksBetween, later.MinWeeksBetween)) : any;
    }
}
