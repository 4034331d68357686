using System.Text.Json;
using WeedAdvisor.Planning.Robust;
using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Reports.Json;

namespace WeedAdvisor.Reports.Robust;

/// <summary>How robust the plans of a visit are as JSON; <c>docs/json.md</c> describes it.</summary>
public static class RobustJson
{
    /// <summary>All areas; the last line ends with a line feed.</summary>
    public static string Of(RobustReport report) =>
        JsonText.Of(json =>
        {
            VisitHeadJson.Write(json, report.Knowledge.Stamp, report.Visit);
            json.WriteList("areas", report.Areas, area => WriteArea(json, area));
        });

    private static void WriteArea(Utf8JsonWriter json, AreaRobust area)
    {
        json.WriteString("id", area.Area.Id);
        json.WriteString("name", area.Area.Name);
        json.WriteTexts("refused", area.Refusals);
        if (area.Robustness is not { } robust)
            return;
        json.WriteNumber("pots", robust.Plan.Case.Year.Pots);
        json.WriteNumber("seed", robust.Seed);
        json.WriteNumber("draws", robust.Draws);
        json.WriteNumber("figuresMoved", robust.Figures.Length);
        json.WriteNumber("figuresAssumed", robust.Assumed);
        json.WriteNumber("staysCheapest", robust.Stays);
        json.WriteList("ways", robust.Ways, way =>
        {
            json.WriteString("kind", way.Kind);
            json.WriteFigure("usdPer1000Pots", way.Way.Usd);
            json.WriteNumber("cheapest", way.Cheapest);
            json.WriteFigure("losesInOneOfTenUsdPer1000Pots", way.BadLossUsd);
        });
        json.WriteTexts("notHeldAgainst", robust.NotOpen);
        WriteBand(json, "losesUsdPer1000Pots", robust.Loses);
        json.WriteFigure("savesUsdPer1000Pots", robust.SavesUsd);
        WriteBand(json, "savesInDrawsUsdPer1000Pots", robust.Saves);
        json.WriteList("turns", robust.Turns, turn =>
        {
            WriteFigure(json, turn.Figure);
            json.WriteFigure("past", turn.Past);
            json.WriteBoolean("isAbove", turn.IsAbove);
            json.WriteString("thenCheapest", turn.Kind);
            json.WriteFigure("losesUsdPer1000Pots", turn.LosesUsd);
        });
        json.WriteList("leans", robust.Leans, lean =>
        {
            WriteFigure(json, lean.Figure);
            json.WriteFigure("meanWhereItLoses", lean.MeanLost);
            json.WriteFigure("meanElsewhere", lean.MeanKept);
        });
        json.WriteList("swings", robust.Swings, swing =>
        {
            WriteFigure(json, swing.Figure);
            json.WriteFigure("low", swing.Figure.Low);
            json.WriteFigure("usual", swing.Figure.Usual);
            json.WriteFigure("high", swing.Figure.High);
            json.WriteBoolean("isAssumed", swing.Figure.IsAssumed);
            json.WriteTexts("sources", swing.Figure.Sources);
            json.WriteFigure("savesAtLowUsdPer1000Pots", swing.SavesAtLow);
            json.WriteFigure("savesAtHighUsdPer1000Pots", swing.SavesAtHigh);
        });
    }

    private static void WriteFigure(Utf8JsonWriter json, MovedFigure figure)
    {
        json.WriteString("figure", figure.Id);
        json.WriteString("name", figure.Name);
        json.WriteString("unit", figure.Unit);
    }

    private static void WriteBand(Utf8JsonWriter json, string name, DrawnBand? band)
    {
        if (band is null)
            return;
        json.WriteStartObject(name);
        json.WriteFigure("low", (decimal)band.Low);
        json.WriteFigure("middle", (decimal)band.Middle);
        json.WriteFigure("high", (decimal)band.High);
        json.WriteEndObject();
    }
}
