using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Planning.Dates;

/// <summary>Dates of a treatment: after potting has settled, after the last use of the same active, before film goes on.</summary>
internal static class TreatmentDates
{
    private const int DaysInWeek = 7;

    /// <summary>The dates of a treatment in an area.</summary>
    public static ActionDates Of(Treatment treatment, VisitArea area, DateOnly visit, KnowledgeBase knowledge)
    {
        (DateOnly earliest, string? heldBack) = new[]
        {
            AfterPotting(treatment, area),
            AfterLastUse(treatment, area, knowledge),
        }.OfType<(DateOnly Day, string? Because)>().Append((visit, null)).MaxBy(limit => limit.Item1);
        (DateOnly Day, string Because)? latest = BeforeCovering(treatment, area);
        return new ActionDates(
            earliest,
            heldBack,
            latest?.Day,
            latest?.Because,
            treatment.ResidualWeeks is { } weeks ? earliest.AddDays((int)(weeks.Low * DaysInWeek)) : null);
    }

    private static (DateOnly, string?)? AfterPotting(Treatment treatment, VisitArea area)
    {
        if (DateOf(area, "potted-on") is not { } potted)
            return null;
        bool bareRoot = area.Answers.GetValueOrDefault("potted-from") is Answer.Words words && words.Value.Contains("bare-root");
        decimal? wait = bareRoot ? treatment.WaitBareRootDays ?? treatment.WaitAfterPottingDays : treatment.WaitAfterPottingDays;
        return wait is > 0 and { } days ? (potted.AddDays((int)Math.Ceiling(days)), "after potting the mix has to settle") : null;
    }

    // Only an interval that the record gives holds a date back; one that it leaves out keeps the treatment waiting anyway.
    private static (DateOnly, string?)? AfterLastUse(Treatment treatment, VisitArea area, KnowledgeBase knowledge)
    {
        if (treatment.RepeatAfterDays is not { } days || area.Past is not { } past)
            return null;
        WordSet actives = PastProduct.ActivesOf(treatment);
        DateOnly? last = past
            .Where(entry => PastProduct.Of(entry, knowledge).Actives is { } used && used.Overlaps(actives))
            .Max(entry => entry.Date);
        return last is { } day ? (day.AddDays((int)Math.Ceiling(days)), "since the last use of the same active") : null;
    }

    private static (DateOnly, string)? BeforeCovering(Treatment treatment, VisitArea area) =>
        DateOf(area, "covering-date") is { } covering && treatment.DaysBeforeCovering is { } days
            ? (covering.AddDays(-(int)Math.Ceiling(days)), "the house must stay open after it before film goes on")
            : null;

    private static DateOnly? DateOf(VisitArea area, string question) =>
        area.Answers.GetValueOrDefault(question) is Answer.Date date ? date.Value : null;
}
