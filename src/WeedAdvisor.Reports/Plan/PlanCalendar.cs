using WeedAdvisor.Reports.Season;

namespace WeedAdvisor.Reports.Plan;

/// <summary>The work of plans as an iCalendar file.</summary>
public static class PlanCalendar
{
    /// <summary>The file: the work of every area that has a plan.</summary>
    public static string Of(PlanReport report) =>
        WorkCalendar.Of(
            report.Visit.Id,
            "Plan of the year",
            report
                .Areas.Where(area => area.Plan?.Best is not null)
                .Select(area => new CalendarArea(
                    area.Area.Id,
                    area.Area.Name,
                    area.Plan!.Case.Year.Day,
                    area.Plan.Best!.Work
                ))
        );
}
