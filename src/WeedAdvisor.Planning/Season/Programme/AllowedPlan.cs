using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Planning.Season.Search;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// The plan that a search came to once the rules have been asked about it, with what it puts on as done. Where they
/// allow less than the problem said, that is put into the problem and the search is made anew.
/// </summary>
/// <param name="Season">The case with the problem as it was in the end.</param>
/// <param name="Search">The search of that problem.</param>
/// <param name="Plan">The plan; null when there is none.</param>
/// <param name="Uses">What goes on in it, with its days.</param>
internal sealed record AllowedPlan(
    SeasonCase Season,
    SeasonSearch Search,
    SeasonPlan? Plan,
    ImmutableArray<PlannedUse> Uses
)
{
    /// <summary>Searches until the plan found has a day for each of its uses.</summary>
    /// <param name="season">The case.</param>
    /// <param name="search">The search, prepared for its problem.</param>
    /// <param name="ask">A line to the rules.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="stop">Stops early.</param>
    public static AllowedPlan Of(
        SeasonCase season,
        SeasonSearch search,
        Func<AreaCase, AreaAdvice> ask,
        KnowledgeBase knowledge,
        CancellationToken stop
    )
    {
        var settled = new Settled(season, stop);
        for (int tries = 0; ; tries++)
        {
            if (settled.Of(search) is not { } plan)
                return new AllowedPlan(season, search, null, []);
            var days = new UseDays(season, ask, knowledge);
            ImmutableArray<PlannedUse> uses = days.Of(plan);
            if (uses.Length == plan.Applications.Length)
                return new AllowedPlan(season, search, plan, uses);
            season = Tightening.Of(season, plan, uses, days, tries);
            search = SeasonSearch.Prepare(season.Problem, search);
        }
    }
}
