using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Nursery;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Reports.Nursery;

namespace WeedAdvisor.Commands;

/// <summary><c>plan</c> without an area: all areas of a visit share hours and money.</summary>
internal static class NurseryRun
{
    /// <summary>The plan of the nursery, ready for any format.</summary>
    /// <exception cref="RefusalException">No area can be planned, or nothing keeps the hours and the money.</exception>
    public static NurseryReport Of(
        Visit visit,
        string file,
        KnowledgeBase knowledge,
        PlanRequest request,
        Surroundings surroundings
    )
    {
        using var watch = NurseryWatch.Start(surroundings);
        Outcome<NurseryPlan, string> plan = NurseryPlanner.Of(
            surroundings.Compile(knowledge),
            visit,
            request,
            watch,
            watch.Stop
        );
        watch.End();
        return plan.IsGood
            ? new NurseryReport(plan.Value, file)
            : throw new RefusalException(ExitCode.Usage, [.. plan.Refusals]);
    }
}
