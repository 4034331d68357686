using System.Globalization;

namespace WeedAdvisor.Planning.Season.Search;

/// <summary>What is wrong with a problem. The search relies on everything that is checked here.</summary>
internal static class ProblemFaults
{
    private const int MostWeeks = 104;
    private const int MostCandidates = 200;
    private const int LongestInterval = 104;
    private const decimal MostMoney = 10_000_000m;
    private const decimal MostDose = 100_000m;

    /// <summary>The faults, in the order of the problem.</summary>
    public static IEnumerable<string> Of(SeasonProblem problem)
    {
        if (problem.Weeks is < 1 or > MostWeeks)
            yield return Text($"weeks must be 1 to {MostWeeks}, not {problem.Weeks}");
        if (problem.Candidates.Length > MostCandidates)
            yield return Text($"there may be {MostCandidates} candidates at most, not {problem.Candidates.Length}");
        foreach (SeasonWeed weed in problem.Weeds.Where(weed => weed.EscapeCost.Length != problem.Weeks))
            yield return Text($"{weed.Name} has {weed.EscapeCost.Length} escape costs, not {problem.Weeks}");
        foreach (
            SeasonWeed weed in problem.Weeds.Where(weed => weed.EscapeCost.Any(cost => cost is < 0 or > MostMoney))
        )
            yield return Text($"an escape cost of {weed.Name} is below 0 or above {MostMoney}");
        foreach (
            string twice in Twice(problem.Candidates.Select(one => one.Name))
                .Concat(Twice(problem.Weeds.Select(one => one.Name)))
        )
            yield return Text($"two have the name {twice}");
        foreach (SeasonCandidate candidate in problem.Candidates)
        {
            if (candidate.Cost.Length != problem.Weeks)
                yield return Text($"{candidate.Name} has {candidate.Cost.Length} costs, not {problem.Weeks}");
            if (candidate.Cost.Any(cost => cost is < 0 or > MostMoney))
                yield return Text($"a cost of {candidate.Name} is below 0 or above {MostMoney}");
        }
        foreach (
            string fault in problem
                .Candidates.Concat(problem.History.Select(past => past.Used))
                .SelectMany(candidate => OfCandidate(candidate, problem.Weeds.Length))
        )
            yield return fault;
        if (
            problem.History.Any(past => past.Week >= 0)
            || !problem
                .History.Select(past => past.Week)
                .SequenceEqual(problem.History.Select(past => past.Week).Order())
        )
            yield return "past applications must lie before week 0, oldest first";
        if (problem.Gaps.Any(gap => gap.Weeks is < 0 or > LongestInterval))
            yield return Text($"a gap between two candidates is not between 0 and {LongestInterval} weeks");
        foreach (string fault in OfLimits(problem.Limits).Concat(OfWishes(problem)))
            yield return fault;
    }

    private static IEnumerable<string> OfCandidate(SeasonCandidate candidate, int weeds)
    {
        if (candidate.Control.Length != weeds)
            yield return Text($"{candidate.Name} has control for {candidate.Control.Length} weeds, not {weeds}");
        if (candidate.Control.Any(ages => ages.Any(control => !(control is >= 0 and <= 1))))
            yield return Text($"a control of {candidate.Name} is not between 0 and 1");
        if (candidate.Control.Any(ages => ages.Length > MostWeeks))
            yield return Text($"{candidate.Name} acts for more than {MostWeeks} weeks");
        if (candidate.MinWeeksBetween is < 0 or > LongestInterval)
            yield return Text($"the interval of {candidate.Name} is not between 0 and {LongestInterval} weeks");
        if (candidate.MaxUsesPerYear < 0 || candidate.UsesBefore < 0)
            yield return Text($"{candidate.Name} has uses below 0");
        if (candidate.Actives.Any(active => active.KgPerHa is < 0 or > MostDose))
            yield return Text($"a dose of {candidate.Name} is below 0 or above {MostDose} kg/ha");
        foreach (
            string twice in Twice(candidate.Actives.Select(active => active.Active)).Concat(Twice(candidate.Sites))
        )
            yield return Text($"{candidate.Name} names {twice} twice");
    }

    private static IEnumerable<string> OfLimits(SeasonLimits limits)
    {
        if (limits.MinWeeksBetweenAny is < 1 or > LongestInterval)
            yield return Text($"weeks between any two applications must be 1 to {LongestInterval}");
        if (limits.MaxRunOfSite is < 1 or > byte.MaxValue)
            yield return "a run of one site of action must be allowed at least 1 and at most 255";
        if (limits.MaxShareOfSite is < 0 or > 1)
            yield return "the share of a site of action must be 0 to 1";
        if (limits.Yearly.Any(limit => limit.KgPerHa is < 0 or > MostDose || limit.KgUsedBefore is < 0 or > MostDose))
            yield return Text($"a yearly limit is below 0 or above {MostDose} kg/ha");
        if (
            limits.Spending is { } spending
            && (spending.Most is < 0 or > MostMoney || spending.Each.Values.Any(IsNoMoney))
        )
            yield return "what may be spent, or what an application spends, is below 0 or too great";
        foreach (string twice in Twice(limits.Yearly.Select(limit => limit.Active)))
            yield return Text($"{twice} has two yearly limits");
    }

    private static bool IsNoMoney(decimal usd) => usd is < 0 or > MostMoney;

    private static IEnumerable<string> OfWishes(SeasonProblem problem)
    {
        SeasonWishes wishes = problem.Wishes;
        if (wishes.Budget is < 0 or > MostMoney || wishes.AtLeast < 0 || wishes.AtMost < 0)
            yield return "a budget or a number of applications is below 0, or the budget too great";
        foreach (
            string name in wishes
                .MustUse.Concat(wishes.Dropped)
                .Where(name => problem.Candidates.All(one => one.Name != name))
        )
            yield return Text($"no candidate is called {name}");
        foreach (CoverWish cover in wishes.MustCover)
        {
            if (problem.Weeds.All(weed => weed.Name != cover.Weed))
                yield return Text($"no weed is called {cover.Weed}");
            if (cover.From < 0 || cover.To >= problem.Weeks || cover.From > cover.To)
                yield return Text($"weeks {cover.From} to {cover.To} are not in the plan");
            if (cover.Control is not (> 0 and <= 1))
                yield return Text($"the control wished for {cover.Weed} must be above 0 and at most 1");
        }
    }

    private static IEnumerable<string> Twice(IEnumerable<string> names) =>
        names
            .GroupBy(name => name, StringComparer.Ordinal)
            .Where(group => group.Skip(1).Any())
            .Select(group => group.Key);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
