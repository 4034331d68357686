using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Nursery;

/// <summary>One way through an area's year as the whole nursery sees it, for all pots of the area.</summary>
/// <param name="HoursPerWeek">Hours of work in its busiest week, 0 or more.</param>
/// <param name="SpentUsd">What it spends on materials and a year's share of tools, US dollars, 0 or more.</param>
/// <param name="Usd">What the year costs with it, US dollars.</param>
public readonly record struct Offer(decimal HoursPerWeek, decimal SpentUsd, decimal Usd)
{
    /// <summary>
    /// What nothing else beats, each once, from the fewest hours up; of two alike the one that stands first.
    /// </summary>
    /// <param name="all">What there is.</param>
    /// <param name="offer">Each as an offer.</param>
    public static ImmutableArray<T> Undominated<T>(IEnumerable<T> all, Func<T, Offer> offer)
    {
        var kept = ImmutableArray.CreateBuilder<T>();
        var stairs = new Stairs();
        IEnumerable<T> cheapestFirst = all.OrderBy(one => offer(one).Usd)
            .ThenBy(one => offer(one).HoursPerWeek)
            .ThenBy(one => offer(one).SpentUsd);
        foreach (T one in cheapestFirst)
        {
            if (stairs.Add(offer(one).HoursPerWeek, offer(one).SpentUsd))
                kept.Add(one);
        }

        return [.. kept.OrderBy(one => offer(one).HoursPerWeek).ThenBy(one => offer(one).SpentUsd)];
    }
}
