using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Nursery;

/// <summary>
/// What the first hours save in an area against nobody going there before the year is over: the way by which each of
/// its hours saves most.
/// </summary>
/// <param name="NeglectUsd">What the year costs when nobody weeds and nothing is put on or laid, US dollars.</param>
/// <param name="Hours">Hours a week of that way; 0 when no way saves anything.</param>
/// <param name="SavedUsd">What they save a year together, US dollars.</param>
public sealed record FirstHours(decimal NeglectUsd, decimal Hours, decimal SavedUsd)
{
    /// <summary>What each of them saves a year, US dollars; 0 when none does.</summary>
    public decimal UsdAnHour => Hours > 0 ? SavedUsd / Hours : 0;

    /// <summary>The first hours of an area, whatever is spent.</summary>
    /// <param name="neglectUsd">What its year costs when nobody does anything, US dollars.</param>
    /// <param name="offers">Its offers.</param>
    public static FirstHours Of(decimal neglectUsd, ImmutableArray<Offer> offers) =>
        offers
            .Where(one => one.HoursPerWeek > 0 && one.Usd < neglectUsd)
            .Select(one => new FirstHours(neglectUsd, one.HoursPerWeek, neglectUsd - one.Usd))
            .Append(new FirstHours(neglectUsd, 0, 0))
            .MaxBy(one => one.UsdAnHour)!;
}
