using WeedAdvisor.Planning.Season.Programme;

namespace WeedAdvisor.Reports.Season;

/// <summary>The work of season plans as an iCalendar file.</summary>
public static class SeasonCalendar
{
    /// <summary>The file: the work of every area that has a plan.</summary>
    public static string Of(SeasonReport report) =>
        WorkCalendar.Of(
            report.Visit.Id,
            "Season plan",
            report
                .Areas.SelectMany(area => new[] { area.Plan, area.After })
                .OfType<YearPlan>()
                .Select(plan => new CalendarArea(
                    plan.Case.Area.Id,
                    plan.Case.Area.Name,
                    plan.Case.Year.From,
                    plan.Work
                ))
        );
}
