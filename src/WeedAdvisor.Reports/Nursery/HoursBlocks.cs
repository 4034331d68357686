using WeedAdvisor.Planning.Nursery;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Nursery;

/// <summary>What more hours are worth.</summary>
internal static class HoursBlocks
{
    public static IEnumerable<Block> Of(NurseryPlan plan)
    {
        Line[] told = [.. Told(plan)];
        if (told.Length == 0 && plan.Hours.Length < 2)
            yield break;
        yield return Heading.Section("What more hours are worth");
        foreach (Line line in told)
            yield return new Paragraph(line).At(2);
        if (plan.Hours.Length < 2)
            yield break;
        yield return new Table(
            [
                new Column("the year costs", 12) { Brief = ["year costs"], Before = "the year costs " },
                new Column("each further hour saves", 17)
                {
                    Brief = ["an hour saves"],
                    Before = "each further hour saves ",
                },
            ],
            [.. plan.Hours.Select((row, i) => RowOf(row, i + 1 < plan.Hours.Length ? plan.Hours[i + 1] : null))]
        )
        {
            RowHead = "in the busiest week",
            Indent = 2,
            HeadWidth = 20,
        };
    }

    private static Row RowOf(HoursWorth row, HoursWorth? next) =>
        new(
            Line.Of($"{NurseryWords.Hours(row.HoursPerWeek)}"),
            [
                Amounts.Dollars(row.Usd),
                next is null
                    ? Line.FromString("nothing")
                    : Amounts.Dollars((row.Usd - next.Usd) / (next.HoursPerWeek - row.HoursPerWeek)),
            ]
        );

    private static IEnumerable<Line> Told(NurseryPlan plan)
    {
        if (plan.TenMore is { } more)
        {
            yield return plan.Usd > more.Usd
                ? Line.Of(
                    $"Ten more hours a week would save {Amounts.Dollars(plan.Usd - more.Usd)} a year: {Moves(more)}."
                )
                : Line.FromString("Ten more hours a week would save nothing.");
        }

        if (plan.TenFewer is { } fewer && fewer.Usd > plan.Usd)
        {
            yield return Line.Of(
                $"With {NurseryWords.Hours(fewer.HoursPerWeek)} a week, ten fewer, the year would cost "
                    + $"{Amounts.Dollars(fewer.Usd - plan.Usd)} more: {Moves(fewer)}."
            );
        }
    }

    private static string Moves(OtherHours other) =>
        Listing.And([
            .. other
                .Moved.OrderByDescending(one => Math.Abs(one.Hours))
                .Select(one =>
                    $"{one.Area.Name} {(one.Hours > 0 ? "+" : "-")}{NurseryWords.Hours(Math.Abs(one.Hours)).Text}"
                ),
        ]);
}
