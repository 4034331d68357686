using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Areas;

/// <summary>The weeds to come in an area: none of them was seen there.</summary>
/// <param name="Weeds">The weeds; those taken for usual the commonest first.</param>
/// <param name="From">
/// <see cref="Origin.Answer"/> when the visit tells them, or that there are none;
/// <see cref="Origin.Assumed"/> when they follow from region, month, place and surroundings.
/// </param>
/// <param name="Day">The day from which is looked ahead.</param>
public sealed record ComingWeeds(ImmutableArray<ComingWeed> Weeds, Origin From, DateOnly Day)
{
    /// <summary>
    /// What has to be known before it is certain that these are all that are usual; empty when it is, and when they are
    /// told.
    /// </summary>
    public ImmutableArray<Need> Needs { get; init; } = [];
}

/// <summary>A weed to come.</summary>
/// <param name="Weed">The weed's id.</param>
/// <param name="EmergesNow">Whether it comes up in this month; else in the next; null where nobody reckoned.</param>
/// <param name="BlowsIn">Whether it is named only because weeds seed round about and wind carries it.</param>
public sealed record ComingWeed(string Weed, bool? EmergesNow = null, bool BlowsIn = false);
