namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>The limits of a problem that are sums over applications.</summary>
internal static class ResourceRows
{
    /// <summary>The rows: doses, uses, money, numbers of applications.</summary>
    public static IEnumerable<ResourceRow> Of(SeasonProblem problem, long[] money)
    {
        SeasonWishes wishes = problem.Wishes;
        foreach (ActiveLimit limit in problem.Limits.Yearly)
            yield return AtMost(problem, Units.OfDose(limit.KgPerHa) - Units.OfDose(limit.KgUsedBefore), one => DoseOf(one, limit));
        foreach (SeasonCandidate limited in problem.Candidates)
        {
            if (limited.MaxUsesPerYear is { } uses)
                yield return AtMost(problem, uses - limited.UsesBefore, one => one.Name == limited.Name ? 1 : 0);
        }
        if (wishes.Budget is { } budget)
            yield return new ResourceRow(money, Units.OfMoney(budget), IsNeed: false);
        if (wishes.AtMost is { } most)
            yield return AtMost(problem, most, _ => 1);
        if (wishes.AtLeast is { } least)
            yield return AtLeast(problem, least, _ => true);
        foreach (string name in wishes.MustUse)
            yield return AtLeast(problem, 1, one => one.Name == name);
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
