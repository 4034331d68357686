using System.Collections.Immutable;
using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Weeding;

/// <summary>The intervals side by side.</summary>
internal static class IntervalTable
{
    private static readonly ImmutableArray<Column> s_columns =
    [
        new("weeks apart", 5) { Brief = ["weeks", "apart"] },
        new("rounds", 7) { Brief = ["rounds"], After = " rounds" },
        new("walking, h", 8) { Brief = ["walking", "h"], After = " h walking" },
        new("pulling, h", 8) { Brief = ["pulling", "h"], After = " h pulling" },
        new("hours in all", 7) { Brief = ["hours", "in all"], After = " h in all" },
        new("cost, USD", 8) { Brief = ["cost", "USD"], After = " USD" },
        new("seeds shed", 11) { Brief = ["seeds", "shed"], After = " seeds shed" },
        new("standing at the end", 9) { Brief = ["standing", "at end"], After = " standing at the end" },
    ];

    public static Table Of(AreaWeedingReport area, IntervalComparison compared) =>
        new(s_columns, [.. compared.Intervals.Select(one => RowOf(one, area, compared))])
        {
            HeadPlace = RowHeadPlace.InSentence,
            SentenceIndent = 2,
            LeastPage = 80,
        };

    private static Row RowOf(IntervalCost one, AreaWeedingReport area, IntervalComparison compared)
    {
        bool isCheapest = one == compared.Cheapest;
        bool isPresent = one == area.Present;
        return new Row(WeedingWords.Every(one.Season), Cells(one, area.Scale))
        {
            Remark = string.Join(
                ", ",
                new[] { isCheapest ? "cheapest" : "", isPresent ? "now" : "" }.Where(word => word.Length > 0)
            ),
            Tone = isCheapest ? Tone.Strong : Tone.Normal,
        };
    }

    private static ImmutableArray<Line> Cells(IntervalCost one, double scale)
    {
        WeedingSeason season = one.Season;
        return
        [
            Amounts.Whole(season.IntervalWeeks),
            Amounts.Whole(season.Rounds.Length),
            Amounts.Tenths(season.WalkingHours * scale),
            Amounts.Tenths(season.PullingHours * scale),
            Amounts.Tenths(season.Hours * scale),
            new Amount(one.Usd * (decimal)scale, "", "#,0"),
            Amounts.Whole(season.SeedsShed * scale),
            Amounts.Whole(season.Standing * scale),
        ];
    }
}
