using System.Globalization;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Weeding;

/// <summary>The intervals side by side; one below the other where the page is narrow.</summary>
internal static class IntervalTable
{
    private const int WidthOfTable = 80;

    private static readonly int[] s_columns = [5, 7, 8, 8, 7, 8, 11, 9];

    public static void Write(Page page, WeedingReport report, AreaWeedingReport area, IntervalComparison compared)
    {
        page.Heading("Rounds compared");
        bool isTable = page.Width >= WidthOfTable && compared.Seasons.All(season => Fits(Cells(season, report, compared)));
        if (isTable)
        {
            page.Write(0, Row("weeks", "rounds", "walking", "pulling", "hours", "cost", "seeds", "standing"), "");
            page.Write(0, Row("apart", "", "h", "h", "in all", "USD", "shed", "at end"), "");
        }

        foreach (WeedingSeason season in compared.Seasons)
        {
            string[] cells = Cells(season, report, compared);
            string remark = Remark(season, area, compared);
            if (isTable)
                page.Write(0, Row(cells) + " ", remark);
            else
                page.Write(
                    2,
                    $"{WeedingText.Every(season)}: ",
                    $"{cells[1]} rounds, {cells[2]} h walking, {cells[3]} h pulling, {cells[4]} h in all, {cells[5]} USD, "
                    + $"{cells[6]} seeds shed, {cells[7]} standing at the end{(remark.Length > 0 ? $" ({remark})" : "")}");
        }

        page.Gap();
    }

    private static string Remark(WeedingSeason season, AreaWeedingReport area, IntervalComparison compared) =>
        string.Join(", ", new[]
        {
            season.IntervalWeeks == compared.Cheapest.IntervalWeeks ? "cheapest" : "",
            season.IntervalWeeks == area.Present?.IntervalWeeks ? "now" : "",
        }.Where(word => word.Length > 0));

    private static string[] Cells(WeedingSeason season, WeedingReport report, IntervalComparison compared) =>
    [
        season.IntervalWeeks.ToString(CultureInfo.InvariantCulture),
        season.Rounds.Length.ToString(CultureInfo.InvariantCulture),
        Tenths(season.WalkingHours * report.Scale),
        Tenths(season.PullingHours * report.Scale),
        Tenths(season.Hours * report.Scale),
        Tenths(season.CostUsd(compared.WageUsdPerHour) * report.Scale, "#,0"),
        WeedingText.Whole(season.SeedsShed * report.Scale),
        WeedingText.Whole(season.Standing * report.Scale),
    ];

    private static bool Fits(string[] cells) => cells.Zip(s_columns).All(pair => pair.First.Length < pair.Second);

    private static string Row(params string[] cells) =>
        string.Concat(cells.Select((cell, column) => cell.PadLeft(s_columns[column])));

    private static string Tenths(double value, string format = "#,0.0") => value.ToString(format, CultureInfo.InvariantCulture);
}
