using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Season.Search;

/// <summary>What the grower asks on top of the limits. Every wish can be left out; together they can clash.</summary>
public sealed record SeasonWishes
{
    /// <summary>The most the applications may cost together; null when there is no budget.</summary>
    public decimal? Budget { get; init; }

    /// <summary>The fewest applications; null when none is asked for.</summary>
    public int? AtLeast { get; init; }

    /// <summary>The most applications; null when not limited.</summary>
    public int? AtMost { get; init; }

    /// <summary>Weeks in which nothing may go on.</summary>
    public ImmutableSortedSet<int> ClosedWeeks { get; init; } = [];

    /// <summary>Candidates that must go on at least once.</summary>
    public ImmutableArray<string> MustUse { get; init; } = [];

    /// <summary>Candidates that must not go on.</summary>
    public ImmutableArray<string> Dropped { get; init; } = [];

    /// <summary>Weeds that must be held in certain weeks.</summary>
    public ImmutableArray<CoverWish> MustCover { get; init; } = [];
}

/// <summary>A weed that must be held in every week of a span.</summary>
/// <param name="Weed">The weed's name.</param>
/// <param name="From">First week.</param>
/// <param name="To">Last week.</param>
/// <param name="Control">The control it needs in each of these weeks, above 0 and at most 1.</param>
public sealed record CoverWish(string Weed, int From, int To, double Control);
