using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Weeding;

/// <summary>The working of one round, line by line: the dearest one of the season.</summary>
internal static class RoundWorking
{
    public static IEnumerable<Block> Of(WeedingReport report, WeedingSeason season, AreaWeeding weeding)
    {
        if (season.Rounds.IsEmpty)
            yield break;
        WeedingRound round = season.Rounds.MaxBy(one => one.Hours)!;
        yield return Heading.Section(
            $"How the longest of them comes about ({Figures.Day(report.Visit.Date.AddDays(7 * round.Week))})"
        );
        foreach (Line line in Working(season, weeding, round))
            yield return new Paragraph(line).At(2);
    }

    private static IEnumerable<Line> Working(WeedingSeason season, AreaWeeding weeding, WeedingRound round)
    {
        double wage = (double)weeding.Year.WageUsd,
            pots = weeding.Year.Pots / 1000.0,
            usd = round.Hours * pots * wage,
            materials = season.MaterialsUsdPerRound * pots;
        yield return Line.Of(
            $"walk and look: {Amounts.Whole(weeding.Year.Pots)} pots x "
                + $"{Number(round.WalkingHours * 3600 / 1000, "s")} = "
                + $"{Minutes(round.WalkingHours * pots)}"
        );
        for (int size = 0; size < PlantSizes.Count; size++)
        {
            if (round.Pulled[size] * pots < 0.5)
                continue;
            double seconds = round.PullingHours[size] * 3600 / round.Pulled[size];
            yield return Line.Of(
                $"pull {PlantSizes.Names[size]}: {Amounts.Whole(round.Pulled[size] * pots)} weeds x "
                    + $"{Number(seconds, "s")} = "
                    + $"{Minutes(round.PullingHours[size] * pots)}"
            );
        }

        yield return Line.Of($"in all: {Minutes(round.Hours * pots)} = {Number(round.Hours * pots, "h")}");
        yield return Line.Of(
            $"cost: {Number(round.Hours * pots, "h")} x {Number(wage, Amount.Dollar)} + "
                + $"{Amounts.Dollars(materials)} "
                + $"materials = {Amounts.Dollars(usd + materials)}"
        );
    }

    private static Amount Minutes(double hours) => new((decimal)(hours * 60), "min", "#,0.0");

    private static Amount Number(double value, string unit) => new((decimal)value, unit, "0.##");
}
