namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>The limits of a problem that are sums over applications.</summary>
internal static class ResourceRows
{
    private const int MostSums = 2000;

    /// <summary>The rows: doses, uses, money, numbers of applications.</summary>
    public static IEnumerable<ResourceRow> Of(SeasonProblem problem, long[] money)
    {
        SeasonWishes wishes = problem.Wishes;
        foreach (ActiveLimit limit in problem.Limits.Yearly)
        {
            foreach (ResourceRow row in OfActive(problem, limit))
                yield return row;
        }
        foreach (SeasonCandidate limited in problem.Candidates)
        {
            if (limited.MaxUsesPerYear is { } uses)
                yield return AtMost(problem, uses - limited.UsesBefore, one => one.Name == limited.Name ? 1 : 0);
        }
        if (wishes.Budget is { } budget)
            yield return new ResourceRow(money, Units.OfMoney(budget), IsNeed: false);
        if (problem.Limits.Spending is { } spending)
            yield return AtMost(problem, Units.OfMoney(spending.Most), one => Units.OfMoney(spending.Of(one)));
        if (wishes.AtMost is { } most)
            yield return AtMost(problem, most, _ => 1);
        if (wishes.AtLeast is { } least)
            yield return AtLeast(problem, least, _ => true);
        foreach (string name in wishes.MustUse)
            yield return AtLeast(problem, 1, one => one.Name == name);
    }

    // Half a dose is no dose: the room is cut down to the greatest sum of doses that fits, and for each dose it is said
    // how often that much or more can go on.
    private static IEnumerable<ResourceRow> OfActive(SeasonProblem problem, ActiveLimit limit)
    {
        long room = Math.Max(0, Units.OfDose(limit.KgPerHa) - Units.OfDose(limit.KgUsedBefore));
        long[] doses =
        [
            .. problem.Candidates.Select(one => DoseOf(one, limit)).Where(dose => dose > 0).Distinct().Order(),
        ];
        if (doses.Length == 0)
            yield break;
        yield return AtMost(problem, GreatestSum(doses, room), one => DoseOf(one, limit));
        foreach (long dose in doses.Skip(1))
            yield return AtMost(problem, room / dose, one => DoseOf(one, limit) >= dose ? 1 : 0) with
            {
                IsImplied = true,
            };
        yield return AtMost(problem, room / doses[0], one => DoseOf(one, limit) > 0 ? 1 : 0) with
        {
            IsImplied = true,
        };
    }

    private static long GreatestSum(long[] doses, long room)
    {
        var sums = new HashSet<long> { 0 };
        var open = new Stack<long>(sums);
        while (open.TryPop(out long sum))
        {
            foreach (long more in doses.Select(dose => sum + dose).Where(more => more <= room))
            {
                if (sums.Add(more))
                    open.Push(more);
            }

            // Many unlike doses: the room as it stands is right too.
            if (sums.Count > MostSums)
                return room;
        }
        return sums.Max();
    }

    private static long DoseOf(SeasonCandidate candidate, ActiveLimit limit) =>
        candidate.Actives.Where(active => active.Active == limit.Active).Sum(active => Units.OfDose(active.KgPerHa));

    // What was used beyond a limit before the plan begins leaves no room; it is not a debt that could bar other things.
    private static ResourceRow AtMost(SeasonProblem problem, long room, Func<SeasonCandidate, long> use) =>
        new(PerSpot(problem, use), Math.Max(0, room), IsNeed: false);

    private static ResourceRow AtLeast(SeasonProblem problem, int need, Func<SeasonCandidate, bool> counts) =>
        new(PerSpot(problem, one => counts(one) ? -1 : 0), -need, IsNeed: true);

    private static long[] PerSpot(SeasonProblem problem, Func<SeasonCandidate, long> use) =>
        [.. problem.Candidates.SelectMany(one => Enumerable.Repeat(use(one), problem.Weeks))];
}
