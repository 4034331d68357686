using System.Collections.Immutable;
using WeedAdvisor.Planning.Costs;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>What the grower asks of the season plan.</summary>
public sealed record SeasonRequest
{
    /// <summary>The first day of the plan; null for the day of the visit. The plan has 52 weeks.</summary>
    public DateOnly? From { get; init; }

    /// <summary>The most applications, 0 to 52; null for the usual most.</summary>
    public int? AtMost { get; init; }

    /// <summary>The fewest applications, 1 to 52; null when none is asked for.</summary>
    public int? AtLeast { get; init; }

    /// <summary>Weeks of the plan, 0 to 51, in which nothing may go on.</summary>
    public ImmutableSortedSet<int> Closed { get; init; } = [];

    /// <summary>The most the applications may cost for 1000 pots, US dollars; null when there is no budget.</summary>
    public decimal? BudgetUsd { get; init; }

    /// <summary>How many applications running may share a site of action, 1 to 12; null lifts rotation.</summary>
    public int? RunOfSite { get; init; } = 1;

    /// <summary>
    /// The greatest share of the year's applications that one site of action may have, above 0 to 1; null when not
    /// limited.
    /// </summary>
    public decimal? ShareOfSite { get; init; }

    /// <summary>Ids of treatments that must not go on.</summary>
    public ImmutableArray<string> Dropped { get; init; } = [];

    /// <summary>Ids of treatments that must go on at least once.</summary>
    public ImmutableArray<string> MustUse { get; init; } = [];

    /// <summary>Weeks between weeding rounds, 1 to 52; null for the visit's answer.</summary>
    public int? RoundsWeeks { get; init; }

    /// <summary>The day film comes off; null for the average last frost.</summary>
    public DateOnly? Uncovering { get; init; }

    /// <summary>Prices; null for the shipped ones.</summary>
    public PriceBook? Prices { get; init; }

    /// <summary>How many pots the area holds; null for those answered or the usual ones.</summary>
    public int? Pots { get; init; }

    /// <summary>What an hour of labour costs, US dollars; null for the visit's answer or the default price.</summary>
    public decimal? WageUsdPerHour { get; init; }

    /// <summary>Whether what waits for an answer is taken for clear, to tell what it could be worth at most.</summary>
    internal bool CountsWaiting { get; init; }
}
