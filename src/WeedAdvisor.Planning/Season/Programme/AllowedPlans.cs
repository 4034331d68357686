using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Planning.Season.Search;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// What a search came to once the rules have been asked about each of its plans, with what the plan puts on as done.
/// Where they allow less than the problem said, that is put into the problem and the search is made anew.
/// </summary>
/// <typeparam name="T">What is searched for.</typeparam>
/// <param name="Season">The case with the problem as it was in the end.</param>
/// <param name="Search">The search of that problem.</param>
/// <param name="Found">What was found.</param>
/// <param name="Uses">For each plan in it, what goes on, with its days.</param>
internal sealed record AllowedPlans<T>(
    SeasonCase Season,
    SeasonSearch Search,
    T Found,
    ImmutableArray<ImmutableArray<PlannedUse>> Uses
)
{
    /// <summary>Searches until every plan found has a day for each of its uses.</summary>
    /// <param name="season">The case.</param>
    /// <param name="search">The search, prepared for its problem.</param>
    /// <param name="ask">A line to the rules.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="find">Searches.</param>
    /// <param name="plansIn">The plans in what was found.</param>
    public static AllowedPlans<T> Of(
        SeasonCase season,
        SeasonSearch search,
        Func<AreaCase, AreaAdvice> ask,
        KnowledgeBase knowledge,
        Func<SeasonSearch, T> find,
        Func<T, ImmutableArray<SeasonPlan>> plansIn
    )
    {
        for (int tries = 0; ; tries++)
        {
            T found = find(search);
            ImmutableArray<SeasonPlan> plans = plansIn(found);
            var days = new UseDays(season, ask, knowledge);
            ImmutableArray<ImmutableArray<PlannedUse>> uses = [.. plans.Select(days.Of)];
            int failed = Enumerable
                .Range(0, plans.Length)
                .FirstOrDefault(i => uses[i].Length < plans[i].Applications.Length, -1);
            if (failed < 0)
                return new AllowedPlans<T>(season, search, found, uses);
            season = Tightening.Of(season, plans[failed], uses[failed], days, tries);
            search = SeasonSearch.Prepare(season.Problem, search);
        }
    }
}
