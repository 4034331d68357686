using WeedAdvisor.Inference.Entry;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Facts;

/// <summary>
/// Where it is said that nothing was put on here or in this house lately, and a use of these days is told. One told of
/// the area itself counts; where it was told of another that may share the roof, the answer counts as not known.
/// </summary>
public static class DeniedUse
{
    /// <summary>Whether a use of these days is told here, or of another area whose house it closed.</summary>
    public static bool In(AreaCase looked, KnowledgeBase knowledge) =>
        PutOnLately.IsContradicted(looked.Area, looked.Date) || InHouse(looked, knowledge);

    /// <summary>
    /// Whether a use of these days, told of another area, closed the house in which this one stands or may stand.
    /// </summary>
    internal static bool InHouse(AreaCase looked, KnowledgeBase knowledge) =>
        PutOnLately.SaysNo(looked.Area)
        && looked.Others.Any(other =>
            PutOnLately.ToldOf(other, looked.Date).Any(use => EntryInterval.Of(use, knowledge).ClosesHouse)
            && Roof.Of(looked.Area, other, knowledge).Shared != Truth.No
        );
}
