using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Planning.Dates;

/// <summary>When an action can, and must, be done, as far as the visit and the records say.</summary>
/// <param name="Earliest">The first day it may be done; the day of the visit when nothing holds it back.</param>
/// <param name="EarliestBecause">What holds it back; null when nothing does.</param>
/// <param name="Latest">The last day it does its work; null when nothing presses.</param>
/// <param name="LatestBecause">What presses; null when nothing does.</param>
/// <param name="LookAgain">When its effect may begin to fade: go and look; null when not known.</param>
public sealed record ActionDates(
    DateOnly Earliest, string? EarliestBecause, DateOnly? Latest, string? LatestBecause, DateOnly? LookAgain)
{
    /// <summary>The dates of an action in an area.</summary>
    /// <param name="action">The action.</param>
    /// <param name="area">The area as it was seen.</param>
    /// <param name="visit">The day of the visit.</param>
    /// <param name="knowledge">The records that the area names.</param>
    public static ActionDates Of(CatalogueAction action, VisitArea area, DateOnly visit, KnowledgeBase knowledge) =>
        action switch
        {
            Treatment treatment => TreatmentDates.Of(treatment, area, visit, knowledge),
            Practice { Kind: "weeding" } => WeedingDates.Of(area, visit, knowledge),
            _ => Open(visit),
        };

    /// <summary>Nothing holds back and nothing presses.</summary>
    internal static ActionDates Open(DateOnly visit) => new(visit, null, null, null, null);
}
