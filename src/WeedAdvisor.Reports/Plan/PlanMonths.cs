using System.Globalization;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Plan;

/// <summary>The months of a plan: rounds, hours, and what goes on.</summary>
internal static class PlanMonths
{
    private const int MonthColumns = 10;
    private const double Thousand = 1000;

    public static IEnumerable<Block> Of(AreaPlan plan, PlannedWay best, Names names)
    {
        YearCase year = plan.Case.Year;
        DateOnly last = year.Day.AddDays((7 * year.Weeks) - 1);
        yield return Heading.Section("Month by month");
        yield return new Table(
            [
                new Column("rounds", 8) { Brief = ["rounds"], After = " rounds" },
                new Column("hours of weeding", 8) { Brief = ["hours"], After = " h of weeding" },
            ],
            [.. Months(year.Day, last).Select(month => RowOf(plan, best, names, month))]
        )
        {
            HeadWidth = MonthColumns,
            Indent = 2,
            RemarkHead = "what goes on",
            RemarkGap = 2,
        };
    }

    private static IEnumerable<DateOnly> Months(DateOnly from, DateOnly last)
    {
        for (var month = new DateOnly(from.Year, from.Month, 1); month <= last; month = month.AddMonths(1))
            yield return month;
    }

    private static Row RowOf(AreaPlan plan, PlannedWay best, Names names, DateOnly month)
    {
        YearCase year = plan.Case.Year;
        WeedingRound[] rounds =
        [
            .. best.Way.Season.Rounds.Where(round => IsIn(year.Day.AddDays(7 * round.Week), month)),
        ];
        string goesOn = string.Join(
            "; ",
            best.Uses.Where(use => IsIn(use.Days.First, month)).Select(use => names.Action(use.Treatment))
        );
        return new Row(
            month.ToString("MMM yyyy", CultureInfo.InvariantCulture),
            [Amounts.Whole(rounds.Length), Amounts.Tenths(rounds.Sum(round => round.Hours) * year.Pots / Thousand)]
        )
        {
            Remark = goesOn,
        };
    }

    private static bool IsIn(DateOnly day, DateOnly month) => day.Year == month.Year && day.Month == month.Month;
}
