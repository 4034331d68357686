using System.Collections.Immutable;
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

    public static Table Of(WeedingReport report, AreaWeedingReport area, IntervalComparison compared) =>
        new(s_columns, [.. compared.Seasons.Select(season => RowOf(season, report, area, compared))])
        {
            HeadPlace = RowHeadPlace.InSentence,
            SentenceIndent = 2,
            LeastPage = 80,
        };

    private static Row RowOf(
        WeedingSeason season,
        WeedingReport report,
        AreaWeedingReport area,
        IntervalComparison compared
    )
    {
        bool isCheapest = season.IntervalWeeks == compared.Cheapest.IntervalWeeks;
        bool isPresent = season.IntervalWeeks == area.Present?.IntervalWeeks;
        return new Row(WeedingWords.Every(season), Cells(season, report, compared))
        {
            Remark = string.Join(
                ", ",
                new[] { isCheapest ? "cheapest" : "", isPresent ? "now" : "" }.Where(word => word.Length > 0)
            ),
            Tone = isCheapest ? Tone.Strong : Tone.Normal,
        };
    }

    private static ImmutableArray<Line> Cells(
        WeedingSeason season,
        WeedingReport report,
        IntervalComparison compared
    ) =>
        [
            Amounts.Whole(season.IntervalWeeks),
            Amounts.Whole(season.Rounds.Length),
            Amounts.Tenths(season.WalkingHours * report.Scale),
            Amounts.Tenths(season.PullingHours * report.Scale),
            Amounts.Tenths(season.Hours * report.Scale),
            new Amount((decimal)(season.CostUsd(compared.WageUsdPerHour) * report.Scale), "", "#,0"),
            Amounts.Whole(season.SeedsShed * report.Scale),
            Amounts.Whole(season.Standing * report.Scale),
        ];
}
