using System.Collections.Immutable;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Programme;

namespace WeedAdvisor.Planning.Plan;

/// <summary>The plan of an area's year: everything chosen together. Money is US dollars for 1000 pots.</summary>
public sealed record AreaPlan
{
    /// <summary>The case.</summary>
    public required PlanCase Case { get; init; }

    /// <summary>The plan; null when no plan keeps the hours, the budget and the wishes.</summary>
    public required PlannedWay? Best { get; init; }

    /// <summary>
    /// Where there is no plan: rounds and measures that would do with more hours or money than were asked for, those of
    /// the fewest hours first and of the least money second; empty when there is a plan, and where what must be in it
    /// leaves none.
    /// </summary>
    public ImmutableArray<Way> WouldDo { get; init; } = [];

    /// <summary>Today's way, which the plan is held against.</summary>
    public required Way Today { get; init; }

    /// <summary>Hands alone at the rounds that suit them best; null when no rounds keep the hours.</summary>
    public required Way? HandsAlone { get; init; }

    /// <summary>No plan under the same rules and wishes costs less than this.</summary>
    public required decimal LeastUsd { get; init; }

    /// <summary>What was left out, dearest mistake last: the best plan found with it.</summary>
    public required ImmutableArray<LeftOut> LeftOut { get; init; }

    /// <summary>Plans of another kind, cheapest first.</summary>
    public required ImmutableArray<RunnerUp> RunnersUp { get; init; }

    /// <summary>Standing choices that were priced in full.</summary>
    public required int Looked { get; init; }

    /// <summary>Those whose preventives were searched.</summary>
    public required int Searched { get; init; }

    /// <summary>Whether it was stopped, or ended, before it was content.</summary>
    public required bool IsCutShort { get; init; }

    /// <summary>By how much of its price a better plan could be cheaper, percent; null when there is none.</summary>
    public decimal? GapPercent => Best is { Way.Usd: > 0 and var usd } ? Math.Max(0, usd - LeastUsd) / usd * 100 : null;

    /// <summary>Whether it is proven that no plan is cheaper by more than two percent.</summary>
    public bool IsProven => GapPercent <= YearPlan.ProvenPercent;
}

/// <summary>A plan with its price and the days of what goes on.</summary>
/// <param name="Choice">What stands all the year.</param>
/// <param name="Way">The whole as a way through the year.</param>
/// <param name="Uses">What goes on, with its days; in order.</param>
public sealed record PlannedWay(StandingChoice Choice, Way Way, ImmutableArray<PlannedUse> Uses)
{
    /// <summary>
    /// All work by day, as the rules allow it; where preventives cannot be planned, rounds and what is laid.
    /// </summary>
    public ImmutableArray<PlannedWork> Work { get; init; } = [];

    /// <summary>Weeks in which no preventive may go on, and why; empty where preventives cannot be planned.</summary>
    public ImmutableArray<ClosedSpan> Closed { get; init; } = [];
}

/// <summary>A measure that the plan does not take.</summary>
/// <param name="Action">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="CostsUsd">What it costs itself in the best plan found with it.</param>
/// <param name="SavesUsd">What it saves there of everything else; less than it costs.</param>
public sealed record LeftOut(string Action, string Name, decimal CostsUsd, decimal SavesUsd);

/// <summary>The best plan found of another kind.</summary>
/// <param name="Kind">What kind, in plain words.</param>
/// <param name="Way">The plan.</param>
/// <param name="DearerUsd">By how much it is dearer.</param>
public sealed record RunnerUp(string Kind, Way Way, decimal DearerUsd);
