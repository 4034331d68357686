using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Season.Search;

/// <summary>One treatment at one rate.</summary>
/// <param name="Name">Its name; unique among the candidates.</param>
/// <param name="Cost">
/// For each week, the money an application costs then: product, labour and the risk of injury. Null when that week is
/// not allowed.
/// </param>
/// <param name="Control">
/// For each weed, its control in the week of application (index 0) and the weeks after, each 0 to 1. Weeks beyond the
/// list have none. It may rise and fall.
/// </param>
/// <param name="Actives">The actives it holds; a premix has several.</param>
/// <param name="Sites">Its sites of action; a premix has several.</param>
public sealed record SeasonCandidate(
    string Name,
    ImmutableArray<decimal?> Cost,
    ImmutableArray<ImmutableArray<double>> Control,
    ImmutableArray<ActiveDose> Actives,
    ImmutableArray<string> Sites
)
{
    /// <summary>
    /// Weeks that must lie between applications that share an active. Of two such applications the longer interval
    /// holds, whichever came first; 6 means that week 6 is the first allowed after week 0.
    /// </summary>
    public int MinWeeksBetween { get; init; }

    /// <summary>Applications of it allowed in a year; null when not limited.</summary>
    public int? MaxUsesPerYear { get; init; }

    /// <summary>How many of them were given before the plan begins.</summary>
    public int UsesBefore { get; init; }
}

/// <summary>An active and how much of it one application brings.</summary>
/// <param name="Active">The active's ISO common name or id.</param>
/// <param name="KgPerHa">Kilograms of active ingredient per hectare.</param>
public sealed record ActiveDose(string Active, decimal KgPerHa);
