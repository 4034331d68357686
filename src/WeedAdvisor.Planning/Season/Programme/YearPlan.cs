using System.Collections.Immutable;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Search;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// The plan of an area's year, with what it leaves open and what its rules cost. All money is US dollars for 1000 pots.
/// </summary>
public sealed record YearPlan
{
    /// <summary>The greatest gap at which a plan is called proven, percent of its price.</summary>
    public const decimal ProvenPercent = 2;

    /// <summary>The case that was planned.</summary>
    public required SeasonCase Case { get; init; }

    /// <summary>The best plan; null when no plan meets the wishes, see <see cref="Clash"/>.</summary>
    public required SeasonPlan? Plan { get; init; }

    /// <summary>The plan as a way through the year, with its whole price; null when there is none.</summary>
    public required Way? Way { get; init; }

    /// <summary>The same year with nothing put on.</summary>
    public required Way HandsAlone { get; init; }

    /// <summary>
    /// No plan under the same rules and wishes costs less than this for 1000 pots; null when it was not worked out.
    /// </summary>
    public decimal? LeastUsd { get; init; }

    /// <summary>By how much of its price a better plan could be cheaper, percent; null when not known.</summary>
    public decimal? GapPercent =>
        Way is { Usd: > 0 } way && LeastUsd is { } least ? Math.Max(0, way.Usd - least) / way.Usd * 100 : null;

    /// <summary>Whether it is proven that no plan is cheaper by more than two percent.</summary>
    public bool IsProven => GapPercent <= ProvenPercent;

    /// <summary>
    /// What goes on, with the days on which the rules allow it, in the order of the plan; empty when there is none.
    /// </summary>
    public required ImmutableArray<PlannedUse> Uses { get; init; }

    /// <summary>The next best plans found that differ in what goes on, cheapest first.</summary>
    public required ImmutableArray<NextBest> NextBest { get; init; }

    /// <summary>What each wish and rule costs.</summary>
    public required ImmutableArray<RulePrice> RulePrices { get; init; }

    /// <summary>What it would cost not to go out in a month in which the plan does.</summary>
    public required ImmutableArray<MonthPrice> MonthPrices { get; init; }

    /// <summary>The smallest set of wishes that clash; empty when there is a plan.</summary>
    public required ImmutableArray<SeasonWish> ClashingWishes { get; init; }

    /// <summary>The wishes that clash in plain words, products by their ids.</summary>
    public ImmutableArray<string> Clash => [.. ClashingWishes.Select(wish => wish.In(Case.Problem))];

    /// <summary>What is to be done through the year, by day.</summary>
    public required ImmutableArray<PlannedWork> Work { get; init; }

    /// <summary>Weeks in which a weed comes up and is not held, by weed and week.</summary>
    public required ImmutableArray<EscapeSpan> Escapes { get; init; }

    /// <summary>Weeks in which no preventive may go on, and why.</summary>
    public required ImmutableArray<ClosedSpan> Closed { get; init; }

    /// <summary>What the year costs when nothing goes on.</summary>
    public decimal HandsOnlyUsd => HandsAlone.Usd;

    /// <summary>What was assumed, as sentences.</summary>
    public required ImmutableArray<string> Assumed { get; init; }
}

/// <summary>Another plan with its whole price.</summary>
/// <param name="Way">The plan as a way through the year.</param>
/// <param name="Uses">What goes on, with its days.</param>
public sealed record NextBest(Way Way, ImmutableArray<PlannedUse> Uses);

/// <summary>What it costs to stay in for a month.</summary>
/// <param name="Year">The year.</param>
/// <param name="Month">The month, 1 to 12.</param>
/// <param name="Usd">How much dearer the best plan without it is, US dollars; null when there is none.</param>
/// <param name="Percent">The same in percent of the plan; null when there is none.</param>
public sealed record MonthPrice(int Year, int Month, decimal? Usd, decimal? Percent);

/// <summary>A run of weeks in which a weed comes up and is held less than half.</summary>
/// <param name="Weed">The weed's id.</param>
/// <param name="FromWeek">The first week.</param>
/// <param name="ToWeek">The last week.</param>
/// <param name="Seedlings">Seedlings that get through in 1000 pots.</param>
/// <param name="Usd">What pulling them costs, US dollars.</param>
public sealed record EscapeSpan(string Weed, int FromWeek, int ToWeek, double Seedlings, decimal Usd);

/// <summary>A run of weeks in which no preventive may go on.</summary>
/// <param name="FromWeek">The first week.</param>
/// <param name="ToWeek">The last week.</param>
/// <param name="Because">The reason that bars most of them; the wish where the weeks were closed by request.</param>
public sealed record ClosedSpan(int FromWeek, int ToWeek, string Because);

/// <summary>What kind of work it is.</summary>
public enum PlannedWorkKind
{
    /// <summary>A preventive goes on.</summary>
    Apply,

    /// <summary>What is up is pulled before a preventive goes on or film closes over it.</summary>
    CleanUp,

    /// <summary>A preventive is watered in.</summary>
    WaterIn,

    /// <summary>Somebody looks at what came through.</summary>
    LookAgain,

    /// <summary>A weeding round.</summary>
    Round,

    /// <summary>Something that is no chemical: a mulch, a change of watering, cleaning.</summary>
    Practice,

    /// <summary>Film goes on or comes off.</summary>
    Film,
}

/// <summary>One piece of work.</summary>
/// <param name="Day">The first day it is for.</param>
/// <param name="LastDay">The last day; the same where it is one day.</param>
/// <param name="Kind">What kind of work it is.</param>
/// <param name="Action">Id of the practice or treatment; null for what is neither.</param>
/// <param name="Text">What to do, in one sentence.</param>
public sealed record PlannedWork(DateOnly Day, DateOnly LastDay, PlannedWorkKind Kind, string? Action, string Text)
{
    /// <summary>Whether the sentence itself says what kind of work it is.</summary>
    public bool NamesItsKind => Kind is PlannedWorkKind.Round or PlannedWorkKind.Film;
}
