using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Season.Search;

/// <summary>What label, law and resistance management allow.</summary>
public sealed record SeasonLimits
{
    /// <summary>How much of an active a year may see, over all candidates that hold it.</summary>
    public ImmutableArray<ActiveLimit> Yearly { get; init; } = [];

    /// <summary>
    /// How many applications running may share a site of action: 1 means that it must change every time. Null: no
    /// rotation.
    /// </summary>
    public int? MaxRunOfSite { get; init; }

    /// <summary>
    /// The greatest share (0 to 1) of the plan's applications that one site of action may have. With K applications a
    /// site may be in at most max(1, floor(share x K)) of them: one is always allowed. Null: no such limit.
    /// </summary>
    public decimal? MaxShareOfSite { get; init; }

    /// <summary>Weeks between any two applications, at least 1.</summary>
    public int MinWeeksBetweenAny { get; init; } = 1;

    /// <summary>What may be spent on materials; null when not limited.</summary>
    public SpendingLimit? Spending { get; init; }
}

/// <summary>What may be spent on materials, which are a part of what an application costs.</summary>
/// <param name="Each">What one application spends, by name of the candidate, US dollars; those without spend
/// nothing.</param>
/// <param name="Most">The most for all together, US dollars, at least 0.</param>
public sealed record SpendingLimit(ImmutableDictionary<string, decimal> Each, decimal Most)
{
    /// <summary>What one application of a candidate spends, US dollars.</summary>
    public decimal Of(SeasonCandidate candidate) => Each.GetValueOrDefault(candidate.Name);
}

/// <summary>How much of an active a year may see.</summary>
/// <param name="Active">The active.</param>
/// <param name="KgPerHa">Kilograms of active ingredient per hectare and year.</param>
/// <param name="KgUsedBefore">How much of it was given this year before the plan begins.</param>
public sealed record ActiveLimit(string Active, decimal KgPerHa, decimal KgUsedBefore = 0);
