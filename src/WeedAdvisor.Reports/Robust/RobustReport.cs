using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Robust;

namespace WeedAdvisor.Reports.Robust;

/// <summary>How robust the plan of one area is, or why nobody can say.</summary>
/// <param name="Area">The area.</param>
/// <param name="Robustness">The answer; null when there is no plan.</param>
/// <param name="Refusals">Why not, as sentences; empty when there is an answer.</param>
public sealed record AreaRobust(VisitArea Area, PlanRobustness? Robustness, ImmutableArray<string> Refusals);

/// <summary>How robust the plans of a visit are, for any format.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Knowledge">The knowledge.</param>
/// <param name="Areas">Area by area, in the order of the visit.</param>
public sealed record RobustReport(Visit Visit, KnowledgeBase Knowledge, ImmutableArray<AreaRobust> Areas);
