using System.Text.Json;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Json;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Weeding;

/// <summary>The weeding figures of a visit as JSON; <c>docs/json.md</c> describes it.</summary>
public static class WeedingJson
{
    /// <summary>All areas; the last line ends with a line feed.</summary>
    public static string Of(WeedingReport report, KnowledgeBase knowledge) =>
        JsonText.Of(json =>
        {
            VisitHeadJson.Write(json, knowledge.Stamp, report.Visit);
            json.WriteList("areas", report.Areas, area => WriteArea(json, area, report));
        });

    private static void WriteArea(Utf8JsonWriter json, AreaWeedingReport area, WeedingReport report)
    {
        json.WriteString("id", area.Area.Id);
        json.WriteString("name", area.Area.Name);
        json.WriteTexts("refused", area.Refusals);
        if (area is not { Weeding: { } weeding, Compared: { } compared })
            return;
        json.WriteNumber("pots", weeding.Year.Pots);
        json.WriteBoolean("potsAssumed", weeding.Year.Block.Pots.From == Origin.Assumed);
        json.WriteFigure("wageUsdPerHour", weeding.Year.WageUsd);
        json.WriteNumber("weeks", weeding.Year.Weeks);
        if (weeding.PresentIntervalWeeks is { } present)
            json.WriteNumber("presentIntervalWeeks", present);
        else
            json.WriteNull("presentIntervalWeeks");
        json.WriteNumber("cheapestIntervalWeeks", compared.Cheapest.Season.IntervalWeeks);
        json.WriteList("intervals", compared.Intervals, one => WriteInterval(json, one, area, report));
        json.WriteList("wageChanges", compared.WageChanges, change =>
        {
            json.WriteFigure("wageUsdPerHour", change.WageUsdPerHour);
            json.WriteNumber("belowWeeks", change.BelowWeeks);
            json.WriteNumber("aboveWeeks", change.AboveWeeks);
        });
        json.WriteTexts("assumptions", weeding.Assumptions);
    }

    private static void WriteInterval(
        Utf8JsonWriter json,
        IntervalCost one,
        AreaWeedingReport area,
        WeedingReport report
    )
    {
        double scale = area.Scale;
        WeedingSeason season = one.Season;
        json.WriteNumber("weeks", season.IntervalWeeks);
        json.WriteFigure("walkingHours", season.WalkingHours * scale);
        json.WriteFigure("pullingHours", season.PullingHours * scale);
        json.WriteFigure("hours", season.Hours * scale);
        json.WriteFigure("costUsd", one.Usd * (decimal)scale);
        json.WriteList("rounds", season.Rounds, round => WriteRound(json, round, report, scale));
        json.WriteFigure("clearingHours", season.Clearing.Hours * scale);
        json.WriteList("weeds", season.Weeds, weed =>
        {
            json.WriteString("weed", weed.Weed);
            json.WriteFigure("standingAtStart", weed.StandingAtStart * scale);
            json.WriteFigure("emerged", weed.Emerged * scale);
            json.WriteFigure("pulled", weed.Pulled * scale);
            json.WriteFigure("dead", weed.Dead * scale);
            json.WriteFigure("standing", weed.Standing * scale);
            json.WriteFigure("seedsShed", weed.SeedsShed * scale);
        });
        if (area.Bands.FirstOrDefault(one => one.IntervalWeeks == season.IntervalWeeks) is { } band)
        {
            WriteBand(json, "hoursBand", band.Hours, scale);
            WriteBand(json, "costUsdBand", band.CostUsd, scale);
            json.WriteFigure("cheapestShare", band.CheapestShare);
        }
    }

    private static void WriteRound(Utf8JsonWriter json, WeedingRound round, WeedingReport report, double scale)
    {
        json.WriteString("date", Figures.Day(report.Visit.Date.AddDays(7 * round.Week)));
        json.WriteFigure("hours", round.Hours * scale);
        json.WriteFigure("pulled", round.Pulled.Sum() * scale);
    }

    private static void WriteBand(Utf8JsonWriter json, string name, DrawnBand band, double scale)
    {
        json.WriteStartObject(name);
        json.WriteFigure("low", band.Low * scale);
        json.WriteFigure("middle", band.Middle * scale);
        json.WriteFigure("high", band.High * scale);
        json.WriteEndObject();
    }
}
