using System.Collections.Immutable;
using System.Text.Json;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Reports.Json;

namespace WeedAdvisor.Reports.Money;

/// <summary>
/// What the ways of a visit cost, as JSON; <c>docs/json.md</c> describes it. The same report gives the same bytes.
/// </summary>
public static class MoneyJson
{
    /// <summary>The report as JSON text; the last line ends with a line feed.</summary>
    public static string Of(MoneyReport report) =>
        JsonText.Of(json =>
        {
            VisitHeadJson.Write(json, report.Knowledge.Stamp, report.Visit);
            json.WriteTexts("ownPrices", report.Prices.Own.Select(price => price.Id));
            json.WriteList("areas", report.Areas, area => WriteArea(json, area));
            json.WriteTexts("notes", MoneyNotes.Standing(report).Select(note => note.Text));
        });

    private static void WriteArea(Utf8JsonWriter json, AreaMoney area)
    {
        json.WriteString("area", area.Area.Id);
        json.WriteString("name", area.Area.Name);
        json.WriteTexts("refusals", area.Refusals);
        if (area.Compared is not { } compared)
            return;
        MoneyCase money = compared.Case;
        json.WriteFigure("wageUsdPerHour", money.WageUsd);
        json.WriteNumber("pots", money.Pots);
        json.WriteBoolean("potsAssumed", !money.IsPotsGiven);
        json.WriteNumber("intervalWeeks", money.IntervalWeeks);
        json.WriteBoolean("intervalAssumed", !money.IsIntervalGiven);
        json.WriteTexts("weeds", money.Year.Weeds.Counted.Select(weed => weed.Weed.Id));
        json.WriteTexts("notCounted", money.LeftOut);
        json.WriteList("ways", compared.Ways, way => WriteWay(json, compared, way));
        json.WriteList("notCompared", compared.Left, left =>
        {
            json.WriteString("action", left.Action);
            json.WriteString("because", left.Because);
        });
        if (area.Against is { } against)
            WriteAgainst(json, against);
    }

    private static void WriteWay(Utf8JsonWriter json, WaysCompared compared, Way way)
    {
        json.WriteString("way", way.Plan.Id);
        json.WriteString("name", way.Plan.Name);
        json.WriteBoolean("isToday", way == compared.Today);
        json.WriteNumber("intervalWeeks", way.Plan.IntervalWeeks);
        json.WriteList("actions", way.Plan.Parts, part =>
        {
            json.WriteString("action", part.Action.Id);
            json.WriteNumber("times", part.Times);
            json.WriteStartArray("weeks");
            foreach (int week in part.Weeks)
                json.WriteNumberValue(week);
            json.WriteEndArray();
        });
        json.WriteFigure("usdPer1000Pots", way.Usd);
        json.WriteFigure("usdPerPot", way.Usd / 1000);
        json.WriteFigure("usdAllPots", MoneyColumns.Whole(compared, way.Usd));
        json.WriteFigure("hoursPer1000Pots", way.Hours);
        json.WriteFigure("outlayUsd", way.OutlayUsd);
        json.WriteFigure("changeUsdAllPots", MoneyColumns.Whole(compared, way.Usd - compared.Today.Usd));
        json.WriteList("items", way.Items, item =>
        {
            json.WriteString("item", item.Id);
            json.WriteString("name", item.Name);
            json.WriteString(
                "kind",
                item.Kind switch
                {
                    CostKind.Material => "material",
                    CostKind.Labour => "labour",
                    CostKind.Equipment => "equipment",
                    CostKind.NextYear => "next-year",
                    _ => "lost-return",
                }
            );
            json.WriteFigure("usdPer1000Pots", item.Usd);
            json.WriteFigure("hoursPer1000Pots", item.Hours);
            json.WriteString("working", item.Working);
        });
    }

    private static void WriteAgainst(Utf8JsonWriter json, WayAgainst against)
    {
        json.WriteStartObject("against");
        json.WriteString("way", against.Way.Plan.Id);
        WriteLines(json, "addedReturns", against.Budget.AddedReturns);
        WriteLines(json, "reducedCosts", against.Budget.ReducedCosts);
        WriteLines(json, "addedCosts", against.Budget.AddedCosts);
        WriteLines(json, "reducedReturns", against.Budget.ReducedReturns);
        json.WriteFigure("netChangeUsdPer1000Pots", against.Budget.NetChangeUsd);
        json.WriteFigure("breakEvenWageUsdPerHour", against.Wage is BreakEven.At at ? at.Value : (decimal?)null);
        json.WriteFigure("paybackYears", against.PaybackYears);
        json.WriteFigure("breakEvenPots", against.BreakEvenPots);
        json.WriteList("sensitivity", against.Sensitivity.Swings, swing =>
        {
            json.WriteString("input", swing.Input.Name);
            json.WriteString("unit", swing.Input.Unit);
            json.WriteFigure("low", swing.Input.Low);
            json.WriteFigure("base", swing.Input.Base);
            json.WriteFigure("high", swing.Input.High);
            json.WriteFigure("netChangeAtLow", swing.AtLow);
            json.WriteFigure("netChangeAtHigh", swing.AtHigh);
        });
        json.WriteEndObject();
    }

    private static void WriteLines(Utf8JsonWriter json, string name, ImmutableArray<BudgetLine> lines) =>
        json.WriteList(name, lines, line =>
        {
            json.WriteString("name", line.Name);
            json.WriteFigure("usdPer1000Pots", line.Usd);
            json.WriteString("working", line.Working);
        });
}
