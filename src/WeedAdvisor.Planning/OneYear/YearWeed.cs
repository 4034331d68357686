using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>A weed of an area's year.</summary>
/// <param name="Weed">Its record.</param>
/// <param name="Origin">Why it is counted.</param>
/// <param name="Traits">What it does here; its seedlings are those that reach the pots for that reason.</param>
/// <param name="Standing">Plants that stand in 1000 pots on the first day, by age in weeks; empty when none do.</param>
public sealed record YearWeed(Weed Weed, WeedOrigin Origin, WeedTraits Traits, ImmutableArray<double> Standing)
{
    /// <summary>
    /// Share of its plants that frost kills at the end of each week, 0 to 1; empty where none does.
    /// </summary>
    public ImmutableArray<double> Frost { get; init; } = [];

    /// <summary>The weed as a plan of rounds needs it.</summary>
    /// <param name="control">Share of its seedlings that is stopped in each week, 0 to 1.</param>
    public PlannedWeed Under(ImmutableArray<double> control) => new(Traits, control, Standing) { Frost = Frost };
}
