using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>Plans a case: the proven best year, what comes next, and what the rules cost.</summary>
public static class SeasonPlanner
{
    private const int HowManyNext = 3;

    /// <summary>The best year alone: for screens, where a change must show at once.</summary>
    /// <param name="season">The case.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="search">The search, prepared for the case's problem; preparing it near an earlier one is
    /// quicker.</param>
    /// <param name="stop">Stops early.</param>
    public static YearPlan Quick(
        SeasonCase season,
        KnowledgeBase knowledge,
        SeasonSearch search,
        CancellationToken stop = default
    ) => Planned(season, knowledge, search, isFull: false, stop);

    /// <summary>
    /// The best year with the next best, the price of each rule and of each month, and the clash when there is no plan.
    /// </summary>
    public static YearPlan Full(SeasonCase season, KnowledgeBase knowledge, CancellationToken stop = default) =>
        Planned(season, knowledge, SeasonSearch.Prepare(season.Problem), isFull: true, stop);

    private static YearPlan Planned(
        SeasonCase season,
        KnowledgeBase knowledge,
        SeasonSearch search,
        bool isFull,
        CancellationToken stop
    )
    {
        Func<AreaCase, AreaAdvice> ask = season.Rules.Open();
        SeasonPlan? proposed = search.Solve(stop: stop).Plan;
        AllowedPlans<SeasonPlan?> bests = AllowedPlans<SeasonPlan?>.Of(
            season,
            search,
            ask,
            knowledge,
            one => one.Solve(stop: stop).Plan,
            plan => plan is null ? [] : [plan]
        );
        (season, search, SeasonPlan? best, _) = bests;
        AllowedPlans<Alternatives>? next =
            isFull && best is not null
                ? AllowedPlans<Alternatives>.Of(
                    season,
                    search,
                    ask,
                    knowledge,
                    one => Alternatives.Of(one, best, HowManyNext, stop: stop),
                    found => found.Plans
                )
                : null;
        return new YearPlan
        {
            Case = season,
            Plan = best,
            MoreToSaveUsd = best is null || proposed is null ? 0 : Math.Max(0, best.Total - proposed.Total),
            Uses = best is null ? [] : bests.Uses[0],
            NextBest = next?.Found.Plans ?? [],
            UsesOfNextBest = next?.Uses ?? [],
            NextBestIsProven = next?.Found.Proven ?? false,
            RulePrices = isFull && best is not null ? RulePrices.Of(search, best, stop: stop).Prices : [],
            MonthPrices = isFull && best is not null ? Months(season, search, best, stop) : [],
            ClashingWishes = best is null ? Clash.Of(season.Problem, stop: stop).Wishes : [],
            Work = best is null ? [] : WorkList.Of(season, bests.Uses[0], ask, knowledge),
            Escapes = best is null ? [] : EscapeSpans.Of(season, best),
            Closed = ClosedSpans.Of(season, ask, knowledge),
            Assumed = SeasonAssumptions.Of(season, knowledge),
        };
    }

    private static ImmutableArray<MonthPrice> Months(
        SeasonCase season,
        SeasonSearch search,
        SeasonPlan best,
        CancellationToken stop
    )
    {
        IEnumerable<(int Year, int Month)> months = best
            .Applications.Select(one => season.Year.DayOf(one.Week))
            .Select(day => (day.Year, day.Month))
            .Distinct();
        return [.. months.Select(month => Priced(month.Year, month.Month))];

        MonthPrice Priced(int year, int month)
        {
            IEnumerable<int> weeks = Enumerable
                .Range(0, SeasonYear.Weeks)
                .Where(week => season.Year.DayOf(week) is var day && day.Year == year && day.Month == month);
            SeasonWishes wishes = season.Problem.Wishes;
            SeasonProblem shut = season.Problem with
            {
                Wishes = wishes with { ClosedWeeks = wishes.ClosedWeeks.Union(weeks) },
            };
            SeasonPlan? without = SeasonSearch.Prepare(shut, search).Solve(stop: stop).Plan;
            decimal? dearer = without is null ? null : Math.Max(0, without.Total - best.Total);
            return new MonthPrice(year, month, dearer, best.Total > 0 ? dearer / best.Total * 100 : null);
        }
    }
}
