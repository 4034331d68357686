using System.Globalization;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Weeding;

/// <summary>The working of one round, line by line: the dearest one of the season.</summary>
internal static class RoundWorking
{
    public static void Write(Page page, WeedingReport report, WeedingSeason season, AreaWeeding weeding)
    {
        if (season.Rounds.IsEmpty)
            return;
        WeedingRound round = season.Rounds.MaxBy(one => one.Hours)!;
        double pots = report.Scale, usd = round.Hours * pots * weeding.WageUsdPerHour, materials = season.MaterialsUsdPerRound * pots;
        page.Heading($"How the longest of them comes about ({Figures.Day(report.Visit.Date.AddDays(7 * round.Week))})");
        page.Write(
            2,
            $"walk and look: {WeedingText.Whole(report.Pots)} pots x {Number(round.WalkingHours * 3600 / 1000)} s = "
            + Minutes(round.WalkingHours * pots));
        for (int size = 0; size < PlantSizes.Count; size++)
        {
            if (round.Pulled[size] * pots < 0.5)
                continue;
            double seconds = round.PullingHours[size] * 3600 / round.Pulled[size];
            page.Write(
                2,
                $"pull {PlantSizes.Names[size]}: {WeedingText.Whole(round.Pulled[size] * pots)} weeds x {Number(seconds)} s = "
                + Minutes(round.PullingHours[size] * pots));
        }

        page.Write(2, $"in all: {Minutes(round.Hours * pots)} = {Number(round.Hours * pots)} h");
        page.Write(
            2,
            $"cost: {Number(round.Hours * pots)} h x ${Number(weeding.WageUsdPerHour)} + {WeedingText.Usd(materials)} "
            + $"materials = {WeedingText.Usd(usd + materials)}");
    }

    private static string Minutes(double hours) => (hours * 60).ToString("#,0.0", CultureInfo.InvariantCulture) + " min";

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
