using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Advise;

/// <summary>The clear actions of one horizon, in the order of the work.</summary>
/// <param name="Horizon">When they can be done.</param>
/// <param name="Lines">The lines of work.</param>
public sealed record ActionGroup(Horizon Horizon, ImmutableArray<WorkLine> Lines)
{
    /// <summary>The groups of an area in their order; horizons without work are left out.</summary>
    public static ImmutableArray<ActionGroup> Of(AreaAdvice area) =>
        [
            .. WorkLine
                .Of(area.Clear)
                .GroupBy(line => line.Best.Horizon)
                .Select(group => new ActionGroup(group.Key, [.. group])),
        ];
}

/// <summary>One line of work: an action, and those that would do its job as well.</summary>
/// <param name="Best">The action.</param>
/// <param name="Others">Others that do the same job, best first; empty for most.</param>
public sealed record WorkLine(ClearAction Best, ImmutableArray<ClearAction> Others)
{
    /// <summary>The lines in the order of the work.</summary>
    public static ImmutableArray<WorkLine> Of(ImmutableArray<ClearAction> actions) =>
        [.. actions.GroupBy(action => action.Rank).Select(line => new WorkLine(line.First(), [.. line.Skip(1)]))];
}
