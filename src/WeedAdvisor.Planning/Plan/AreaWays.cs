using System.Collections.Immutable;
using WeedAdvisor.Planning.Nursery;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Plan;

/// <summary>The plan of an area's year, and the ways that spare hours or money besides.</summary>
/// <param name="Plan">The plan with as many hours and as much money as it wants.</param>
/// <param name="Ways">
/// The ways of which none beats another in hours, money and cost, from the fewest hours up; the plan is among them, and
/// none is cheaper. Empty when there is no plan.
/// </param>
/// <param name="Floors">
/// What no year costs less than: one that takes no more hours and money than one of these has costs at least the least
/// of what those say. From the fewest hours up.
/// </param>
public sealed record AreaWays(AreaPlan Plan, ImmutableArray<AreaWay> Ways, ImmutableArray<Offer> Floors);

/// <summary>A way through an area's year.</summary>
public sealed class AreaWay
{
    private readonly Func<PlannedWay> _planned;

    internal AreaWay(Offer offer, StandingChoice choice, Way way, Func<PlannedWay> planned) =>
        (Offer, Choice, Way, _planned) = (offer, choice, way, planned);

    /// <summary>What it takes and costs, for all pots.</summary>
    public Offer Offer { get; }

    /// <summary>What stands all the year.</summary>
    public StandingChoice Choice { get; }

    /// <summary>The whole.</summary>
    public Way Way { get; }

    /// <summary>
    /// Puts it to the rules and gives its days. Where they allow less than the search knew, what comes back is another
    /// way with the same rounds and measures.
    /// </summary>
    public PlannedWay Planned() => _planned();
}
