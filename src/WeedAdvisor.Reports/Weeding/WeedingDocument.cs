using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Weeding;

/// <summary>The weeding figures of a visit: every area with the intervals side by side and what they rest on.</summary>
public static class WeedingDocument
{
    /// <summary>The document.</summary>
    /// <param name="report">The figures.</param>
    /// <param name="stamp">The knowledge that they were worked out with.</param>
    public static Document Of(WeedingReport report, KnowledgeStamp stamp) =>
        new(
            $"Hand weeding, {report.Visit.Title ?? report.Visit.Id}, from {Figures.LongDay(report.Visit.Date)}",
            [.. LiftedBars.Of(stamp), .. report.Areas.SelectMany(area => OfArea(report, area))]
        );

    private static IEnumerable<Block> OfArea(WeedingReport report, AreaWeedingReport area)
    {
        yield return new Heading(HeadingLevel.Area, Line.Of($"{new Named(area.Area.Name)} ({area.Area.Id})"));
        foreach (string refusal in area.Refusals)
            yield return Said(refusal);
        if (area is not { Weeding: { } weeding, Compared: { } compared })
            yield break;
        yield return Said(
            Line.Of(
                $"Figures are for all pots of the area: {new Amount(weeding.Year.Pots, "pots", "#,0")}"
                    + $"{(weeding.Year.Block.Pots.From == Origin.Assumed ? " (assumed: give --pots)" : "")}, a year."
            )
        );
        yield return Heading.Section("Rounds compared");
        yield return IntervalTable.Of(area, compared);
        yield return new Blank();
        foreach (Line line in Saving(area, compared).Append(WeedingWords.CheapestAt(compared)))
            yield return Said(line);
        WeedingSeason season = (area.Present ?? compared.Cheapest).Season;
        foreach (
            Block block in Bands(area)
                .Concat(Rounds(report, season, area.Scale))
                .Concat(RoundWorking.Of(report, season, weeding))
        )
            yield return block;
        yield return Heading.Section("What this rests on");
        yield return ItemList.Dashes(weeding.Assumptions.Select(Line.FromString)).At(2);
    }

    private static IEnumerable<Line> Saving(AreaWeedingReport area, IntervalComparison compared)
    {
        IntervalCost best = compared.Cheapest;
        if (area.Present is not { } now)
        {
            yield return "How often you weed now is not known. Answer the question 'weeding-interval' to see what a "
                + "change saves.";
            yield break;
        }

        if (now == best)
        {
            yield return $"You weed {WeedingWords.Every(now.Season)}, and that is the cheapest of these.";
            yield break;
        }

        double hours = (now.Season.Hours - best.Season.Hours) * area.Scale;
        Amount usd = Amounts.Dollars((now.Usd - best.Usd) * (decimal)area.Scale);
        Line saved =
            hours >= 0
                ? Line.Of($"saves {Amounts.Hours(hours)} and {usd}.")
                : Line.Of($"takes {Amounts.Hours(-hours)} more but saves {usd}.");
        yield return Line.Of(
            $"You weed {WeedingWords.Every(now.Season)}. Weeding {WeedingWords.Every(best.Season)} {saved}"
        );
        yield return Line.Of(
            $"Why: {WeedingWords.Every(now.Season)}, {Why(now.Season, area.Scale)}; "
                + $"{WeedingWords.Every(best.Season)}, {Why(best.Season, area.Scale)}."
        );
    }

    private static Line Why(WeedingSeason season, double scale)
    {
        double handled = season.Pulled + season.Standing;
        double seconds = handled == 0 ? 0 : season.PullingHours * 3600 / handled;
        Amount up = Amounts.Whole(season.Weeds.Sum(weed => weed.Emerged) * scale);
        return Line.Of($"{up} weeds come up and each takes {new Amount((decimal)seconds, "seconds", "0.0")} to pull");
    }

    private static IEnumerable<Block> Bands(AreaWeedingReport area)
    {
        if (area.Bands.IsEmpty)
            yield break;
        yield return Heading.Section("If the working values are off");
        yield return Said(
            "Nine draws in ten lie above the first number, half above the second, one in ten above the third."
        );
        foreach (UncertainInterval band in area.Bands)
        {
            Line hours = Three(band.Hours, area.Scale, Amounts.Hours),
                usd = Three(band.CostUsd, area.Scale, Amounts.Dollars);
            yield return new Keyed(
                $"{WeedingWords.Weeks(band.IntervalWeeks)}: ",
                Line.Of($"{hours}; {usd}; cheapest in {Amounts.Percent(band.CheapestShare)} of the draws")
            ).At(2);
        }
    }

    private static IEnumerable<Block> Rounds(WeedingReport report, WeedingSeason season, double scale)
    {
        yield return Heading.Section($"Hours of each round, {WeedingWords.Every(season)}");
        Line rounds = Line.Join(
            "; ",
            season.Rounds.Select(round =>
                Line.Of(
                    $"{Figures.Day(report.Visit.Date.AddDays(7 * round.Week))} "
                        + $"{Amounts.Hours(round.Hours * scale)}"
                )
            )
        );
        yield return Said(Line.Of($"{rounds}; clearing at the end {Amounts.Hours(season.Clearing.Hours * scale)}"));
    }

    private static Line Three(DrawnBand band, double scale, Func<double, Amount> write) =>
        Line.Of($"{write(band.Low * scale)}, {write(band.Middle * scale)}, {write(band.High * scale)}");

    private static Block Said(Line line) => new Paragraph(line).At(2);
}
