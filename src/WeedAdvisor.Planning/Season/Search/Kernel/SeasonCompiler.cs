namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>Turns a problem into whole numbers.</summary>
internal static class SeasonCompiler
{
    /// <summary>The problem in whole numbers.</summary>
    /// <param name="problem">A problem without faults.</param>
    /// <param name="feasibilityOnly">
    /// Leave out all costs: a plan then costs the number of wished-for cells that it does not hold, and any plan that
    /// costs 0 will do.
    /// </param>
    public static CompiledSeason Of(SeasonProblem problem, bool feasibilityOnly = false)
    {
        int weeks = problem.Weeks,
            candidates = problem.Candidates.Length;
        var cells = new CellSavings(problem, feasibilityOnly);
        bool[] open = OpenSpots(problem);
        long[] money = [.. problem.Candidates.SelectMany(one => one.Cost.Select(cost => Units.OfMoney(cost ?? 0)))];
        var starts = new int[(candidates * weeks) + 1];
        var saving = new List<long>();
        for (int candidate = 0; candidate < candidates; candidate++)
        {
            for (int week = 0; week < weeks; week++)
            {
                int spot = (candidate * weeks) + week;
                if (open[spot])
                    saving.AddRange(
                        cells.From(problem.Candidates[candidate], week, Math.Min(cells.Reach, weeks - week))
                    );
                starts[spot + 1] = saving.Count;
            }
        }
        long[] past = cells.Past();
        var sites = new SiteNumbers(problem);
        var intervals = new Intervals(problem, sites);
        return new CompiledSeason
        {
            Problem = problem,
            Weeks = weeks,
            Candidates = candidates,
            Rows = cells.Rows,
            Reach = cells.Reach,
            Open = open,
            Cost = feasibilityOnly ? new long[money.Length] : money,
            Saving = [.. saving],
            SavingStart = starts,
            CostOfNothing = cells.EscapeOfAll - past.Sum(),
            Ceiling = cells.Ceiling,
            PastSaving = past,
            Delay = intervals.Delay,
            NextDelay = intervals.NextDelay,
            Ready = intervals.Ready,
            Runs = sites.RunsBefore,
            SitesOf = sites.Of,
            MaxRun = problem.Limits.MaxRunOfSite ?? byte.MaxValue,
            Resources = [.. ResourceRows.Of(problem, money)],
        };
    }

    private static bool[] OpenSpots(SeasonProblem problem) =>
        [
            .. problem.Candidates.SelectMany(candidate =>
                candidate.Cost.Select((_, week) => problem.CostIn(candidate, week) is not null)
            ),
        ];
}
