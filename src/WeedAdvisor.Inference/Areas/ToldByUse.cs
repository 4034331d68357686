using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Areas;

/// <summary>
/// A question whose answer an earlier use as good as tells: who spreads what organic growing forbids hardly grows as
/// organic. It is asked last; every chemical waits for the answer all the same.
/// </summary>
internal static class ToldByUse
{
    /// <summary>The id of the question; null where no use tells.</summary>
    public static string? Of(VisitArea area, KnowledgeBase knowledge) =>
        (area.Past ?? []).Any(past =>
            past.Treatment is { } id && knowledge.Treatments.GetValueOrDefault(id)?.OrganicOk == false
        )
            ? QuestionIds.Organic
            : null;
}
