using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// A first estimate of what an action costs for 1000 pots, or 100 m² of floor: materials and labour, middle of the
/// range.
/// </summary>
internal static class CostEstimate
{
    /// <summary>
    /// Materials plus labour at the area's rate (or the default price), US dollars; null when either is not known.
    /// </summary>
    public static decimal? UsdOf(CatalogueAction action, AreaReading area, KnowledgeBase knowledge) =>
        action.CostOn(area.Ground) is { } cost
        && area.Wage(null, id => knowledge.Prices.GetValueOrDefault(id)) is { Value: var wage }
            ? cost.MaterialsUsd.Middle + (cost.LabourHours.Middle * wage)
            : null;

    /// <summary>Labour, hours; null when not known.</summary>
    public static decimal? HoursOf(CatalogueAction action, AreaReading area) =>
        action.CostOn(area.Ground)?.LabourHours.Middle;
}
