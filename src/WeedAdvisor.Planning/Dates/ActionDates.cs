using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Planning.Dates;

/// <summary>
/// When an action that is clear can, and must, be done, as far as the visit, the rules and the records say. From when
/// one that is barred may be done is told by its bars.
/// </summary>
/// <param name="Earliest">The first day it may be done: the day of the visit.</param>
/// <param name="Latest">The last day it does its work; null when nothing presses.</param>
/// <param name="LatestBecause">What presses; null when nothing does.</param>
/// <param name="LookAgain">When its effect may begin to fade: go and look; null when not known.</param>
public sealed record ActionDates(DateOnly Earliest, DateOnly? Latest, string? LatestBecause, DateOnly? LookAgain)
{
    /// <summary>
    /// The dates of an action in an area by what was seen there; what is still to come up does not press it.
    /// </summary>
    /// <param name="action">The action.</param>
    /// <param name="area">The area as it was seen.</param>
    /// <param name="visit">The day of the visit.</param>
    /// <param name="knowledge">The records that the area names.</param>
    public static ActionDates Of(CatalogueAction action, VisitArea area, DateOnly visit, KnowledgeBase knowledge) =>
        OfItself(action, AreaReading.Of(area, visit, knowledge), visit, knowledge);

    /// <summary>
    /// The dates of an action in an area as read: what stops seed is due before the first weed to come is up, or before
    /// the film where that is earlier.
    /// </summary>
    /// <param name="action">The action.</param>
    /// <param name="reading">The area.</param>
    /// <param name="visit">The day of the visit.</param>
    /// <param name="knowledge">The records that the area names.</param>
    public static ActionDates Of(CatalogueAction action, AreaReading reading, DateOnly visit, KnowledgeBase knowledge)
    {
        ActionDates dates = OfItself(action, reading, visit, knowledge);
        return
            action is Treatment treatment
            && PreventionDay.Of(treatment, reading, visit, knowledge) is { } before
            && (dates.Latest is not { } film || before.Latest < film)
            ? dates with
            {
                Latest = before.Latest,
                LatestBecause = before.Because,
            }
            : dates;
    }

    private static ActionDates OfItself(
        CatalogueAction action,
        AreaReading area,
        DateOnly visit,
        KnowledgeBase knowledge
    ) =>
        action switch
        {
            Treatment treatment => TreatmentDates.Of(treatment, area.Area, visit, knowledge),
            // What is scrubbed off a floor leaves the weeds in its joints standing: their seed does not press it.
            Practice { Kind: "weeding" } practice when !practice.Tags.Contains("floor-work") => WeedingDates.Of(
                area,
                visit,
                knowledge
            ),
            _ => Open(visit),
        };

    /// <summary>Nothing presses.</summary>
    internal static ActionDates Open(DateOnly visit) => new(visit, null, null, null);
}
