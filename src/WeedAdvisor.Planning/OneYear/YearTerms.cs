using System.Collections.Immutable;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>
/// What the grower sets for the sums of a year; null and empty leave it to the visit and the knowledge.
/// </summary>
/// <param name="WageUsd">Cost of an hour, US dollars; null for the area's answer or the price
/// <c>labour-rate</c>.</param>
/// <param name="Pots">How many pots the area holds; null for those answered or the usual ones.</param>
public sealed record YearTerms(decimal? WageUsd = null, int? Pots = null)
{
    /// <summary>Whole weeks between rounds today, 1 to 52; null for the area's answer or the usual ones.</summary>
    public int? IntervalWeeks { get; init; }

    /// <summary>Share of the weeds that a round passes over, 0 to 1; null for the usual one.</summary>
    public double? Missed { get; init; }

    /// <summary>
    /// Share of all seedlings that the applications of today's way stop the year round, 0 to 1, as the grower knows it;
    /// null for what the records say of them.
    /// </summary>
    public double? TodayControl { get; init; }

    /// <summary>Ids of the weeds to count with; empty for those of the area.</summary>
    public ImmutableArray<string> Weeds { get; init; } = [];

    /// <summary>How many weeks are reckoned, 1 to 260.</summary>
    public int Weeks { get; init; } = 52;
}
