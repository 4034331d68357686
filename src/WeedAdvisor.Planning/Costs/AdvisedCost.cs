using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Costs;

/// <summary>What one use of an action costs in an area, in the area's own wage and with its own tools.</summary>
/// <param name="Cost">The cost line by line.</param>
/// <param name="WageUsd">Cost of an hour, US dollars; null when neither the area nor the price list has it.</param>
/// <param name="GrowsWithPots">Whether more pots cost more.</param>
public sealed record AdvisedCost(ActionCost Cost, decimal? WageUsd, bool GrowsWithPots)
{
    /// <summary>US dollars for the whole area; null without a wage.</summary>
    public decimal? Usd => WageUsd is { } wage ? Cost.Usd(wage) : null;

    /// <summary>Hours for the whole area.</summary>
    public decimal Hours => Cost.Hours.Middle;

    /// <summary>The same for 1000 pots, or for 100 m² where no pots stand.</summary>
    public decimal? UsdPerUnit => Usd / Cost.Site.Units;

    /// <summary>Hours for 1000 pots, or for 100 m² where no pots stand.</summary>
    public decimal HoursPerUnit => Hours / Cost.Site.Units;

    /// <summary>What an action costs in an area; null when its record is not there or says too little.</summary>
    /// <param name="action">The action; null for none.</param>
    /// <param name="area">The area as read.</param>
    /// <param name="prices">The prices.</param>
    public static AdvisedCost? Of(CatalogueAction? action, AreaReading area, PriceBook prices)
    {
        if (action is null)
            return null;
        var site = CostSite.Of(area, prices.Knowledge.Usual);
        return ActionCost.Of(action, site, prices, area.Equipment).Value is { } cost
            ? new AdvisedCost(
                cost,
                area.Wage(null, prices.Find)?.Value,
                action is Treatment || action.CostOn(area.Ground) is not { GrowsWith: CostGrowth.Nothing }
            )
            : null;
    }
}
