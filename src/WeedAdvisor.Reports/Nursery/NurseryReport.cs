using WeedAdvisor.Planning.Nursery;

namespace WeedAdvisor.Reports.Nursery;

/// <summary>The plan of a nursery, for any format.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="File">The visit file, as it was typed.</param>
public sealed record NurseryReport(NurseryPlan Plan, string File);
