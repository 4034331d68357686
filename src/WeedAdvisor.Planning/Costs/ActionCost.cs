using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Costs;

/// <summary>
/// What one use of an action costs for a whole area. The one place that reckons it: every page prints these figures,
/// those for 1000 pots are these divided by the thousands of pots.
/// </summary>
/// <param name="Site">What it is reckoned for.</param>
/// <param name="Materials">What is used up, US dollars, line by line.</param>
/// <param name="Work">Hours of work, line by line.</param>
/// <param name="Tool">The tool that the work is reckoned with; null where none or any would do.</param>
/// <param name="Pack">The smallest pack that has to be bought; null where it is not known.</param>
public sealed record ActionCost(
    CostSite Site,
    ImmutableArray<CostLine> Materials,
    ImmutableArray<CostLine> Work,
    string? Tool = null,
    SmallestPack? Pack = null
)
{
    /// <summary>Whether a figure behind it is invented.</summary>
    public bool IsInvented { get; init; }

    /// <summary>Materials, US dollars.</summary>
    public Span MaterialsUsd => Materials.Sum();

    /// <summary>Work, hours.</summary>
    public Span Hours => Work.Sum();

    /// <summary>Materials and work in the middle of their ranges, US dollars.</summary>
    /// <param name="wageUsd">Cost of an hour, US dollars.</param>
    public decimal Usd(decimal wageUsd) => MaterialsUsd.Middle + (Hours.Middle * wageUsd);

    /// <summary>The cost of one use; refused with what is missing.</summary>
    /// <param name="action">The practice or treatment.</param>
    /// <param name="site">What it is reckoned for.</param>
    /// <param name="prices">The prices.</param>
    /// <param name="equipment">Tools that are there; where several would do, the quickest counts.</param>
    /// <param name="tool">The tool to reckon with, whatever is there; null to choose.</param>
    public static Outcome<ActionCost, string> Of(
        CatalogueAction action,
        CostSite site,
        PriceBook prices,
        WordSet equipment,
        string? tool = null
    )
    {
        Outcome<ActionCost, string> cost = action is Treatment treatment
            ? TreatmentCost.Of(treatment, site, prices, equipment, tool)
            : RecordCost.Of(action, site, prices);
        // A price of the grower's own for the whole action takes the place of its materials.
        return cost.IsGood && prices.OwnPriceOf(action) is { } own
            ? cost.Value with
            {
                Materials = [RecordCost.OwnPrice(own, site)],
                Pack = null,
            }
            : cost;
    }
}
