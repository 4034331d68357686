using WeedAdvisor.Inference.Stretches;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Planning.Dates;

/// <summary>Dates of a treatment that is clear: before film goes on, and when its effect may begin to fade.</summary>
internal static class TreatmentDates
{
    private const int DaysInWeek = 7;

    /// <summary>The dates of a treatment in an area.</summary>
    public static ActionDates Of(Treatment treatment, VisitArea area, DateOnly visit, KnowledgeBase knowledge)
    {
        DateOnly? latest = FilmCountdown.Of(knowledge).LastDay(treatment, area, visit);
        return new ActionDates(
            visit,
            latest,
            latest is null ? null : "the house must stay open after it before film goes on",
            treatment.ResidualWeeks is { } weeks ? visit.AddDays((int)(weeks.Low * DaysInWeek)) : null
        );
    }
}
