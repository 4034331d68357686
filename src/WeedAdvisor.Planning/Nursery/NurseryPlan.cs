using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Plan;

namespace WeedAdvisor.Planning.Nursery;

/// <summary>
/// The plan of a whole nursery: its areas share hours and money. All money is US dollars for all pots.
/// </summary>
public sealed record NurseryPlan
{
    /// <summary>The visit.</summary>
    public required Visit Visit { get; init; }

    /// <summary>The knowledge.</summary>
    public required KnowledgeBase Knowledge { get; init; }

    /// <summary>What was asked; hours and budget are those of the whole nursery.</summary>
    public required PlanRequest Request { get; init; }

    /// <summary>The areas that have a share, by the worth of their first hours, the most first.</summary>
    public required ImmutableArray<SharedArea> Areas { get; init; }

    /// <summary>The areas that could not be planned, in the order of the visit.</summary>
    public required ImmutableArray<UnplannedArea> Unplanned { get; init; }

    /// <summary>Hours of the shares together: no week takes more.</summary>
    public decimal HoursPerWeek => Areas.Sum(area => area.Share.HoursPerWeek);

    /// <summary>What is spent on materials and tools.</summary>
    public decimal SpentUsd => Areas.Sum(area => area.Share.SpentUsd);

    /// <summary>What the year costs.</summary>
    public decimal Usd => Areas.Sum(area => area.Share.Usd);

    /// <summary>What the year costs in today's way.</summary>
    public decimal TodayUsd => Areas.Sum(area => area.TodayUsd);

    /// <summary>No sharing of the hours and the money costs less than this.</summary>
    public required decimal LeastUsd { get; init; }

    /// <summary>By how much of its cost another plan could be cheaper, percent.</summary>
    public decimal GapPercent => Usd > 0 ? Math.Max(0, Usd - LeastUsd) / Usd * 100 : 0;

    /// <summary>What the year costs with fewer and more hours, from the fewest up.</summary>
    public required ImmutableArray<HoursWorth> Hours { get; init; }

    /// <summary>The same with ten hours more; null when nothing limits the hours.</summary>
    public required OtherHours? TenMore { get; init; }

    /// <summary>The same with ten hours fewer; null when there are not so many.</summary>
    public required OtherHours? TenFewer { get; init; }

    /// <summary>Places without pots from which weeds come, by what cleaning them is worth, the most first.</summary>
    public required ImmutableArray<SourceWorth> Sources { get; init; }

    /// <summary>Whether it was stopped before all areas were looked at as closely as could be.</summary>
    public required bool IsCutShort { get; init; }

    /// <summary>Whether rounds between those looked at were left out, since there are many areas.</summary>
    public required bool IsCoarse { get; init; }
}

/// <summary>An area with its share.</summary>
/// <param name="Area">The area.</param>
/// <param name="Best">Its plan with all the hours and money it wants.</param>
/// <param name="Plan">Its plan with its share.</param>
/// <param name="Share">What the share takes and costs.</param>
/// <param name="First">What its first hours save.</param>
public sealed record SharedArea(VisitArea Area, AreaPlan Best, PlannedWay Plan, Offer Share, FirstHours First)
{
    /// <summary>What its year costs in today's way.</summary>
    public decimal TodayUsd => Best.Today.Usd * Best.Case.Year.Pots / 1000;

    /// <summary>No plan of it costs less than this, whatever hours and money it has.</summary>
    public decimal LeastUsd => Best.LeastUsd * Best.Case.Year.Pots / 1000;

    /// <summary>What its own plan takes and costs.</summary>
    public required Offer Wanted { get; init; }

    /// <summary>What it is worth to mow round about; null where nothing seeds there.</summary>
    public required SourceCleaned? Mowing { get; init; }

    /// <summary>By how much its year is dearer for having no more than its share.</summary>
    public decimal GivenUpUsd => Share.Usd - Wanted.Usd;
}

/// <summary>An area that could not be planned.</summary>
/// <param name="Area">The area.</param>
/// <param name="Why">Why, as sentences.</param>
/// <param name="ToDo">Names of what is to be done there first; empty when nothing is clear there.</param>
public sealed record UnplannedArea(VisitArea Area, ImmutableArray<string> Why, ImmutableArray<string> ToDo);

/// <summary>What the year costs with so many hours a week.</summary>
/// <param name="HoursPerWeek">The hours.</param>
/// <param name="Usd">The cost.</param>
public sealed record HoursWorth(decimal HoursPerWeek, decimal Usd);

/// <summary>The nursery with other hours.</summary>
/// <param name="HoursPerWeek">Hours that there are.</param>
/// <param name="Usd">What the year then costs.</param>
/// <param name="Moved">By area, how its share changes, hours a week; those that keep theirs are left out.</param>
public sealed record OtherHours(
    decimal HoursPerWeek,
    decimal Usd,
    ImmutableArray<(VisitArea Area, decimal Hours)> Moved
);

/// <summary>A place without pots from which weeds come into the pots of others.</summary>
/// <param name="Place">The place.</param>
/// <param name="Worth">By area that it seeds into, what a clean place saves a year, the most first.</param>
public sealed record SourceWorth(VisitArea Place, ImmutableArray<(VisitArea Area, decimal Usd)> Worth)
{
    /// <summary>The weeds that it shares with those areas, by name.</summary>
    public required ImmutableArray<string> Weeds { get; init; }

    /// <summary>What a clean place saves a year.</summary>
    public decimal Usd => Worth.Sum(one => one.Usd);
}
