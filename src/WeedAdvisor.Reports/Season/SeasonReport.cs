using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Programme;

namespace WeedAdvisor.Reports.Season;

/// <summary>The plan of one area, or why there is none.</summary>
/// <param name="Area">The area.</param>
/// <param name="Plan">The plan; null when the area can't be planned.</param>
/// <param name="Refusals">Why not, as sentences; empty when there is a plan.</param>
/// <param name="After">The plan of the year after; null when it was not asked for.</param>
public sealed record AreaSeason(
    VisitArea Area,
    YearPlan? Plan,
    ImmutableArray<string> Refusals,
    YearPlan? After = null
);

/// <summary>The season plans of a visit, for any format.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Knowledge">The knowledge.</param>
/// <param name="Areas">Area by area, in the order of the visit.</param>
public sealed record SeasonReport(Visit Visit, KnowledgeBase Knowledge, ImmutableArray<AreaSeason> Areas);
