using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Nursery;

/// <summary>What each area gets of the hours and the money: one offer of each, at the least cost together.</summary>
/// <param name="Chosen">By area, which of its offers is taken.</param>
/// <param name="HoursPerWeek">Hours of the shares together.</param>
/// <param name="SpentUsd">What they spend together, US dollars.</param>
/// <param name="Usd">What they cost together, US dollars.</param>
public sealed record Shares(ImmutableArray<int> Chosen, decimal HoursPerWeek, decimal SpentUsd, decimal Usd)
{
    /// <summary>
    /// The shares of least cost, exactly; null when no choice keeps the hours and the money. With as many hours and as
    /// much money it is never dearer.
    /// </summary>
    /// <param name="areas">By area its offers; none is empty.</param>
    /// <param name="hours">The most hours a week together; null for any number.</param>
    /// <param name="usd">The most to spend together, US dollars; null for any amount.</param>
    public static Shares? Of(ImmutableArray<ImmutableArray<Offer>> areas, decimal? hours, decimal? usd) =>
        areas.Any(offers => offers.IsEmpty)
            ? throw new ArgumentException("an area without an offer", nameof(areas))
            : new ShareSearch(areas, hours, usd).Best();
}
