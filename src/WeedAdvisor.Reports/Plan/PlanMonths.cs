using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Plan;

/// <summary>The months of a plan: rounds, hours of all work, and what goes on.</summary>
internal static class PlanMonths
{
    private const int MonthColumns = 10,
        DaysInWeek = 7;
    private const decimal Thousand = 1000;

    public static IEnumerable<Block> Of(AreaPlan plan, PlannedWay best, Names names)
    {
        ImmutableArray<decimal> hours = best.Way.HoursByWeek();
        yield return Heading.Section("Month by month");
        yield return new Table(
            [
                new Column("rounds", 8) { Brief = ["rounds"], After = " rounds" },
                new Column("hours of work", 8) { Brief = ["hours"], After = " h of work" },
            ],
            [
                .. Enumerable
                    .Range(0, hours.Length)
                    .GroupBy(week => MonthOf(DayOf(plan.Case.Year, week)))
                    .Select(weeks => RowOf(plan, best, names, weeks.Key, [.. weeks], hours)),
            ]
        )
        {
            HeadWidth = MonthColumns,
            Indent = 2,
            RemarkHead = "what goes on",
            RemarkGap = 2,
        };
    }

    /// <summary>The rounds as hours a week, part of the year by part.</summary>
    public static Line Rounds(AreaPlan plan, PlannedWay best) =>
        Line.Join(
            "; ",
            RoundHours
                .Of(plan.Case.Year, best.Way)
                .Select(part =>
                    part.Rounds == 0
                        ? Line.FromString($"{In(part.Part)} no round")
                        : Line.Of(
                            $"{In(part.Part)} {Amounts.Tenths((double)part.HoursAWeek)} h a week, the longest round "
                                + $"{Amounts.Tenths((double)part.LongestHours)} h"
                        )
                )
        );

    private static string In(PartOfYear part) =>
        part switch
        {
            PartOfYear.Spring => "in spring",
            PartOfYear.Summer => "in summer",
            _ => "in autumn and winter",
        };

    private static Row RowOf(
        AreaPlan plan,
        PlannedWay best,
        Names names,
        DateOnly month,
        int[] weeks,
        ImmutableArray<decimal> hours
    ) =>
        new(
            month.ToString("MMM yyyy", CultureInfo.InvariantCulture),
            [
                Amounts.Whole(best.Way.Season.Rounds.Count(round => weeks.Contains(round.Week))),
                Amounts.Tenths((double)(weeks.Sum(week => hours[week]) * plan.Case.Year.Pots / Thousand)),
            ]
        )
        {
            Remark = string.Join(
                "; ",
                best.Uses.Where(use => MonthOf(use.Days.First) == month).Select(use => names.Action(use.Treatment))
            ),
        };

    // The clearing when the year is over is done on its last day.
    private static DateOnly DayOf(YearCase year, int week) =>
        year.Day.AddDays(Math.Min(DaysInWeek * week, (DaysInWeek * year.Weeks) - 1));

    private static DateOnly MonthOf(DateOnly day) => new(day.Year, day.Month, 1);
}
