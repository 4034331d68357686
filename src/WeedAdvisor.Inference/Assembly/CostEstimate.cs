using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>A first estimate of what an action costs for 1000 pots, or 100 m² of floor: materials and labour, middle of the range.</summary>
internal static class CostEstimate
{
    private const string LabourRate = "labour-rate";

    /// <summary>Materials plus labour at the area's rate (or the default price), US dollars; null when either is not known.</summary>
    public static decimal? UsdOf(CatalogueAction action, VisitArea area, KnowledgeBase knowledge) =>
        action.Cost is { } cost && RateOf(area, knowledge) is { } rate
            ? cost.MaterialsUsd.Middle + cost.LabourHours.Middle * rate
            : null;

    /// <summary>Labour, hours; null when not known.</summary>
    public static decimal? HoursOf(CatalogueAction action) => action.Cost?.LabourHours.Middle;

    private static decimal? RateOf(VisitArea area, KnowledgeBase knowledge) =>
        area.Answers.GetValueOrDefault(LabourRate) is Answer.Number given
            ? given.Value
            : knowledge.Prices.GetValueOrDefault(LabourRate)?.Value;
}
