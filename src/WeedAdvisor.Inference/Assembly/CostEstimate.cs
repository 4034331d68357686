using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// What the figures of a record alone say an action costs for 1000 pots, or 100 m² of floor: enough to put the cheaper
/// of two that are worth the same first. What a page prints is reckoned for the pots of the area, by the planning.
/// </summary>
internal static class CostEstimate
{
    /// <summary>
    /// Materials plus labour at the area's rate (or the default price), US dollars; null when the record says neither
    /// or only one.
    /// </summary>
    public static decimal? UsdOf(CatalogueAction action, AreaReading area, KnowledgeBase knowledge) =>
        action.CostOn(area.Ground) is { MaterialsUsd: { } materials, LabourHours: { } hours }
        && area.Wage(null, id => knowledge.Prices.GetValueOrDefault(id)) is { Value: var wage }
            ? materials.Middle + (hours.Middle * wage)
            : null;
}
