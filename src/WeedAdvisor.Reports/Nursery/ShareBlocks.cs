using WeedAdvisor.Planning.Nursery;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Plan;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Nursery;

/// <summary>What each area gets, what it costs, and who gives up what.</summary>
internal static class ShareBlocks
{
    private const int HoursColumns = 9,
        DollarColumns = 12;

    public static IEnumerable<Block> Of(NurseryPlan plan)
    {
        yield return Heading.Section("What each area gets");
        yield return new Table(
            [
                new Column("hours in its busiest week", HoursColumns)
                {
                    Brief = ["busiest", "week"],
                    After = " in the busiest week",
                },
                new Column("each of its first hours saves", DollarColumns)
                {
                    Brief = ["first hour", "saves"],
                    Before = "each of the first saves ",
                },
                new Column("spent in the year", 9) { Brief = ["spent in", "the year"], After = " spent" },
                new Column("the year costs", DollarColumns) { Brief = ["year costs"], Before = "the year costs " },
                new Column("today's way", DollarColumns) { Brief = ["today's way"], Before = "today's way " },
            ],
            [
                .. plan.Areas.Select(area =>
                    RowOf(area.Area.Name, area.Share, Amounts.Dollars(area.First.UsdAnHour), area.TodayUsd)
                ),
                RowOf(
                    "together",
                    new Offer(plan.HoursPerWeek, plan.SpentUsd, plan.Usd),
                    Line.FromString("-"),
                    plan.TodayUsd
                ),
            ]
        )
        {
            RowHead = "area",
            Indent = 2,
        };
        yield return new Paragraph(Line.FromString($"{Limits(plan)} Spent are {PlanSpending.Spent}.")).At(2);
        SharedArea[] giving = [.. plan.Areas.Where(area => area.GivenUpUsd > 0)];
        if (giving.Length == 0)
            yield break;
        yield return Heading.Section("Who gives up what");
        yield return ItemList.Dashes(giving.OrderByDescending(area => area.GivenUpUsd).Select(GivenUp)).At(2);
        yield return new Paragraph("Elsewhere the hours and the money save more than that.").At(2);
    }

    private static string Limits(NurseryPlan plan) =>
        (plan.Request.HoursPerWeek, plan.Request.BudgetUsd) switch
        {
            (null, null) => "Nothing limits the hours or the money: every area has its own best plan.",
            ({ } hours, null) => $"There are {NurseryWords.Hours(hours).Text} a week for all of it.",
            (null, { } usd) => $"There is a budget of {Amounts.Dollars(usd).Text} for all of it.",
            ({ } hours, { } usd) => $"There are {NurseryWords.Hours(hours).Text} a week and a budget of "
                + $"{Amounts.Dollars(usd).Text} for all of it.",
        };

    private static Row RowOf(string name, Offer offer, Line firstHour, decimal todayUsd) =>
        new(
            name,
            [
                NurseryWords.Hours(offer.HoursPerWeek),
                firstHour,
                Amounts.Dollars(offer.SpentUsd),
                Amounts.Dollars(offer.Usd),
                Amounts.Dollars(todayUsd),
            ]
        );

    private static Line GivenUp(SharedArea area)
    {
        string[] less =
        [
            .. Less(
                NurseryWords.Hours(area.Share.HoursPerWeek),
                NurseryWords.Hours(area.Wanted.HoursPerWeek),
                " a week"
            ),
            .. Less(Amounts.Dollars(area.Share.SpentUsd), Amounts.Dollars(area.Wanted.SpentUsd), " to spend"),
        ];
        return Line.Of(
            $"{new Named(area.Area.Name)}: {Listing.And(less)}. Its year costs {Amounts.Dollars(area.GivenUpUsd)} more "
                + $"than its own best plan."
        );
    }

    // What reads the same is not given up.
    private static IEnumerable<string> Less(Amount has, Amount wanted, string what) =>
        has.Text == wanted.Text ? [] : [$"{has.Text}{what} instead of {wanted.Text}"];
}
