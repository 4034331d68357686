using System.Globalization;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Money;
using WeedAdvisor.Reports.Weeding;
using static WeedAdvisor.Interview.Pages.PageLines;

namespace WeedAdvisor.Interview.Desks.Costs;

/// <summary>The costs of an area as a page.</summary>
internal static class CostPage
{
    /// <summary>Why something cannot be reckoned; then the rounds, then the ways, for all pots.</summary>
    public static IEnumerable<Block> Of(CostSum sum) =>
        [
            .. sum.Refusals.Select(why => In(0, why, Tone.Warning)),
            .. sum is { Intervals: { } intervals, Ways: { } ways } ? Rounds(intervals, ways.Case) : [],
            .. sum.Ways is { } compared ? Ways(compared) : [],
        ];

    /// <summary>What today's way costs, item by item, for 1000 pots: there is nothing to hold it against.</summary>
    public static IEnumerable<Block> Items(Way way) =>
        [
            In(0, way.Plan.Name, Tone.Strong),
            new Paragraph(Line.Of($"{Amounts.Dollars(way.Usd)} a year for 1000 pots. The others are held against it.")),
            new ItemList([
                .. way.Items.Select(item => new Item(Item.Dash, Line.Of($"{item.Name}: {Amounts.Dollars(item.Usd)}"))
                {
                    Below = [In(4, item.Working, Tone.Muted)],
                }),
            ]),
        ];

    private static IEnumerable<Block> Rounds(IntervalComparison compared, MoneyCase money)
    {
        yield return new Table(
            [Named("Weeks", 6), Named("hours", 10), Named("cost", 10), Named("seeds shed", 13), Named("standing", 10)],
            [.. compared.Intervals.Select(one => RowOf(one, compared, money))]
        )
        {
            HeadPlace = RowHeadPlace.InSentence,
            RemarkHead = "all pots, a year",
            RemarkGap = 2,
        };
        Line applied = money.Year.TodayControl is { } share
            ? Line.Of($"What you apply stops {Amounts.Percent(share)}.")
            : "What was applied counts until it runs out.";
        yield return new Paragraph(
            Line.Of($"{WeedingWords.CheapestAt(compared)} {applied}") with
            {
                Tone = Tone.Muted,
            }
        );
    }

    private static Row RowOf(IntervalCost one, IntervalComparison compared, MoneyCase money)
    {
        double scale = money.Pots / 1000.0;
        WeedingSeason season = one.Season;
        bool isCheapest = one == compared.Cheapest;
        string[] marks =
        [
            .. isCheapest ? ["cheapest"] : Array.Empty<string>(),
            .. season.IntervalWeeks == money.IntervalWeeks ? ["now"] : Array.Empty<string>(),
        ];
        return new Row(
            WeedingWords.Every(season),
            [
                Amounts.Whole(season.IntervalWeeks),
                Amounts.Whole(season.Hours * scale),
                Amounts.Dollars(one.Usd * (decimal)scale),
                Amounts.Whole(season.SeedsShed * scale),
                Amounts.Whole(season.Standing * scale),
            ]
        )
        {
            Remark = string.Join(", ", marks),
            Tone = isCheapest ? Tone.Strong : Tone.Normal,
        };
    }

    private static IEnumerable<Block> Ways(WaysCompared compared) =>
        [
            new Blank(),
            new Table(
                [Named("weeks", 6), Named("hours", 9), Named("a year", 10), Named("change", 10)],
                [.. compared.Ways.Select((way, at) => RowOf(way, at + 1, compared))]
            )
            {
                RowHead = "Ways, cheapest first",
            },
            In(0, "* today's way. Of all pots, plants that cannot be sold counted in.", Tone.Muted),
            .. MoneyNotes
                .Left(compared)
                .Select(why => new Paragraph(Line.Of($"Not compared. {why}") with { Tone = Tone.Muted })),
            .. compared.Case.LeftOut.Select(why => In(0, $"Not counted: {why}", Tone.Muted)),
        ];

    // The rounds have a column of their own, so the name says only what is done besides.
    private static Row RowOf(Way way, int rank, WaysCompared compared)
    {
        bool isToday = way == compared.Today;
        return new Row(
            Line.FromTextPart(new Named(way.Plan.Means)) with
            {
                Action = way.Plan.Id,
            },
            [
                Amounts.Whole(way.Plan.IntervalWeeks),
                Amounts.Whole((double)way.Hours * compared.Case.Pots / 1000),
                Amounts.Dollars(All(compared, way.Usd)),
                isToday ? "-" : Change(All(compared, way.Usd - compared.Today.Usd)),
            ]
        )
        {
            Mark = $"{rank.ToString(CultureInfo.InvariantCulture).PadLeft(2)}.{(isToday ? '*' : ' ')}",
            Tone = isToday ? Tone.Strong : Tone.Normal,
        };
    }

    private static decimal All(WaysCompared compared, decimal usd) => usd * compared.Case.Pots / 1000;

    private static Line Change(decimal usd) => Line.Of($"{(usd < 0 ? "" : "+")}{Amounts.Dollars(usd)}");

    private static Column Named(string name, int width) =>
        new(name, width) { Brief = [name], Before = name.ToLowerInvariant() + " " };
}
