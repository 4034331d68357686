using System.Collections.Immutable;
using WeedAdvisor.Planning.Costs;

namespace WeedAdvisor.Planning.Plan;

/// <summary>What the grower asks of the plan of a year; null and empty leave it open.</summary>
public sealed record PlanRequest
{
    /// <summary>The first day; null for the day of the visit. The plan has 52 weeks.</summary>
    public DateOnly? From { get; init; }

    /// <summary>The most hours of work in any week, for all pots, 0 or more.</summary>
    public decimal? HoursPerWeek { get; init; }

    /// <summary>The most that may be spent on materials and a year's share of tools, US dollars for all pots.</summary>
    public decimal? BudgetUsd { get; init; }

    /// <summary>Ids of actions that must not be in it.</summary>
    public ImmutableArray<string> Without { get; init; } = [];

    /// <summary>Ids of actions that must be in it.</summary>
    public ImmutableArray<string> With { get; init; } = [];

    /// <summary>Rounds that are wished for, one wish at most for a part of the year; empty to choose all.</summary>
    public ImmutableArray<RoundsWish> Rounds { get; init; } = [];

    /// <summary>How many pots the area holds; null for those answered or the usual ones.</summary>
    public int? Pots { get; init; }

    /// <summary>Cost of an hour, US dollars; null for the visit's answer or the price list.</summary>
    public decimal? WageUsdPerHour { get; init; }

    /// <summary>Prices; null for the shipped ones.</summary>
    public PriceBook? Prices { get; init; }

    /// <summary>Whether what waits for an answer is taken for clear, to tell what it could be worth at most.</summary>
    internal bool CountsWaiting { get; init; }
}
