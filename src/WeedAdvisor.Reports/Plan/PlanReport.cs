using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Plan;

namespace WeedAdvisor.Reports.Plan;

/// <summary>The plan of one area, or why there is none.</summary>
/// <param name="Area">The area.</param>
/// <param name="Plan">The plan; null when the area cannot be planned.</param>
/// <param name="Refusals">Why not, as sentences; empty when there is a plan.</param>
public sealed record AreaPlanned(VisitArea Area, AreaPlan? Plan, ImmutableArray<string> Refusals)
{
    /// <summary>What answers that are missing could make of the plan.</summary>
    public PlanQuestions Questions { get; init; } = PlanQuestions.None;
}

/// <summary>The plans of a visit, for any format.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Knowledge">The knowledge.</param>
/// <param name="Areas">Area by area, in the order of the visit.</param>
public sealed record PlanReport(Visit Visit, KnowledgeBase Knowledge, ImmutableArray<AreaPlanned> Areas);
