using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// Plans a case: the best year, how far from the best it can be, what comes next, what the rules cost.
/// </summary>
public static class SeasonPlanner
{
    private const int HowManyNext = 3,
        HowManyLookedAt = 6;

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
        SeasonCase asked = season;
        (season, search, SeasonPlan? best, ImmutableArray<PlannedUse> uses) = AllowedPlan.Of(
            season,
            search,
            ask,
            knowledge,
            stop
        );
        Way bare = season.WayOf([]);
        Way? way = best is null ? null : season.WayOf(best.Applications);
        if (way is not null)
        {
            season = season.At(way);
            search = SeasonSearch.Prepare(season.Problem, search);
            best = search.Recosted(best!)!;
        }

        return new YearPlan
        {
            Case = season,
            Plan = best,
            Way = way,
            HandsAlone = bare,
            LeastUsd = isFull && way is not null ? SeasonFloor.Of(asked, bare, stop) : null,
            Uses = uses,
            NextBest = isFull && best is not null ? NextBestOf(season, search, best, ask, knowledge, stop) : [],
            RulePrices =
                isFull && best is not null
                    ? [.. RulePrices.Of(search, best, stop: stop).Prices.Select(price => Whole(season, way!, price))]
                    : [],
            MonthPrices = isFull && best is not null ? Months(season, search, way!, stop) : [],
            ClashingWishes = best is null ? Clash.Of(season.Problem, stop: stop).Wishes : [],
            Work = best is null ? [] : WorkList.Of(season, uses, ask, knowledge),
            Escapes = best is null ? [] : EscapeSpans.Of(season, best),
            Closed = ClosedSpans.Of(season, ask, knowledge),
            Assumed = SeasonAssumptions.Of(season, knowledge),
        };
    }

    // Of the plans that the search finds next, those that the rules leave a day for each use.
    private static ImmutableArray<NextBest> NextBestOf(
        SeasonCase season,
        SeasonSearch search,
        SeasonPlan best,
        Func<AreaCase, AreaAdvice> ask,
        KnowledgeBase knowledge,
        CancellationToken stop
    )
    {
        var days = new UseDays(season, ask, knowledge);
        return
        [
            .. Alternatives
                .Of(search, best, HowManyLookedAt, stop: stop)
                .Plans.Select(plan => (Plan: plan, Uses: days.Of(plan)))
                .Where(one => one.Uses.Length == one.Plan.Applications.Length)
                .Take(HowManyNext)
                .Select(one => new NextBest(season.WayOf(one.Plan.Applications), one.Uses))
                .OrderBy(one => one.Way.Usd),
        ];
    }

    // The search knows what seedlings cost near the best plan only; what is printed is the price of whole years.
    private static RulePrice Whole(SeasonCase season, Way best, RulePrice price)
    {
        decimal saved = Math.Max(0, best.Usd - season.WayOf(price.Without.Applications).Usd);
        return price with { Price = saved, Percent = best.Usd > 0 ? saved / best.Usd * 100 : 0, Proven = false };
    }

    private static ImmutableArray<MonthPrice> Months(
        SeasonCase season,
        SeasonSearch search,
        Way best,
        CancellationToken stop
    )
    {
        IEnumerable<(int Year, int Month)> months = best
            .Plan.Parts.SelectMany(part => part.Weeks)
            .Order()
            .Select(season.Year.DayOf)
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
            decimal? dearer = without is null ? null : Math.Max(0, season.WayOf(without.Applications).Usd - best.Usd);
            return new MonthPrice(year, month, dearer, best.Usd > 0 ? dearer / best.Usd * 100 : null);
        }
    }
}
