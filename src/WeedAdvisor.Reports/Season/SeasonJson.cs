using System.Collections.Immutable;
using System.Text.Json;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Reports.Json;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Season;

/// <summary>Season plans as JSON; <c>docs/json.md</c> describes it. The same plan gives the same bytes.</summary>
public static class SeasonJson
{
    private const int Decimals = 4;

    /// <summary>The JSON text; the last line ends with a line feed.</summary>
    public static string Of(SeasonReport report) =>
        JsonText.Of(json =>
        {
            json.WriteNumber("schemaVersion", JsonReport.SchemaVersion);
            json.WriteString("knowledge", report.Knowledge.Stamp.Brief);
            StampJson.WriteLifted(json, report.Knowledge.Stamp);
            json.WriteString("visit", report.Visit.Id);
            json.WriteString("basis", "US dollars for 1000 pots; prices are invented unless you gave your own");
            json.WriteList("areas", report.Areas, area => Area(json, area));
            json.WriteTexts("safety", Safety.StandingLines);
        });

    private static void Area(Utf8JsonWriter json, AreaSeason area)
    {
        json.WriteString("id", area.Area.Id);
        json.WriteTexts("refused", area.Refusals);
        if (area.Plan is not { } plan)
            return;
        Year(json, plan);
        if (area.After is not { } after)
            return;
        json.WriteStartObject("yearAfter");
        Year(json, after);
        json.WriteEndObject();
    }

    private static void Year(Utf8JsonWriter json, YearPlan plan)
    {
        json.WriteString("from", Figures.Day(plan.Case.Year.From));
        json.WriteString("region", plan.Case.Region.Id);
        CostJson.WriteSite(json, plan.Case.Sums.Costed);
        json.WriteTexts("clash", plan.Clash);
        if (plan is { Plan: { } best, Way: { } way })
            Plan(json, plan, best, way);
        json.WriteNumber("handsOnlyUsd", Rounded(plan.HandsOnlyUsd));
        json.WriteList("nextBest", plan.NextBest, next => Inside(json, next.Way, next.Uses));
        json.WriteList("rulePrices", plan.RulePrices, price =>
        {
            json.WriteString("rule", price.Rule.In(plan.Case.Problem));
            json.WriteNumber("usd", Rounded(price.Price));
            json.WriteNumber("percent", Rounded(price.Percent));
        });
        json.WriteList("monthPrices", plan.MonthPrices, month =>
        {
            json.WriteString("month", FormattableString.Invariant($"{month.Year:0000}-{month.Month:00}"));
            Optional(json, "usd", month.Usd);
            Optional(json, "percent", month.Percent);
        });
        json.WriteList("weeds", plan.Case.Weeds.Select((weed, i) => (weed, i)), one =>
            Weed(json, one.weed, plan.Plan?.Control[one.i])
        );
        json.WriteList("escapes", plan.Escapes, span =>
        {
            json.WriteString("weed", span.Weed);
            json.WriteNumber("fromWeek", span.FromWeek);
            json.WriteNumber("toWeek", span.ToWeek);
            json.WriteNumber("seedlings", Math.Round(span.Seedlings, Decimals));
            json.WriteNumber("usd", Rounded(span.Usd));
        });
        json.WriteList("closed", plan.Closed, span =>
        {
            json.WriteNumber("fromWeek", span.FromWeek);
            json.WriteNumber("toWeek", span.ToWeek);
            json.WriteString("because", span.Because);
        });
        json.WriteList("work", plan.Work, work =>
        {
            json.WriteString("day", Figures.Day(work.Day));
            json.WriteString("lastDay", Figures.Day(work.LastDay));
            json.WriteString("kind", SeasonWords.Kind(work.Kind));
            json.WriteText("action", work.Action);
            json.WriteString("text", work.Text);
        });
        json.WriteTexts("assumed", plan.Assumed);
    }

    private static void Plan(Utf8JsonWriter json, YearPlan plan, SeasonPlan best, Way way)
    {
        json.WriteStartObject("plan");
        Inside(json, way, plan.Uses);
        json.WriteNumber("preventivesUsd", Rounded(best.ApplicationCost));
        Optional(json, "leastUsd", plan.LeastUsd);
        Optional(json, "gapPercent", plan.GapPercent);
        json.WriteBoolean("proven", plan.IsProven);
        json.WriteEndObject();
    }

    private static void Inside(Utf8JsonWriter json, Way way, ImmutableArray<PlannedUse> uses)
    {
        json.WriteNumber("totalUsd", Rounded(way.Usd));
        json.WriteNumber("weedingUsd", Rounded(way.WeedingUsd));
        json.WriteNumber("lostUsd", Rounded(way.LostUsd));
        json.WriteNumber("nextYearUsd", Rounded(way.Of(CostKind.NextYear)));
        json.WriteList("applications", uses, use =>
        {
            json.WriteNumber("week", use.Week);
            json.WriteString("day", Figures.Day(use.Days.First));
            json.WriteString("lastDay", Figures.Day(use.Days.Last));
            json.WriteBoolean("longestOfSeveral", use.IsLongestOfSeveral);
            json.WriteString("treatment", use.Treatment);
            json.WriteNumber("usd", Rounded(use.Usd));
        });
    }

    private static void Weed(Utf8JsonWriter json, WeedPressure weed, ImmutableArray<double>? control)
    {
        json.WriteString("weed", weed.Weed.Id);
        json.WriteString("origin", SeasonWords.Origin(weed.Origin));
        Numbers(json, "seedlings", weed.Emergence);
        Numbers(json, "escapeUsd", weed.EscapeUsd.Select(usd => (double)usd));
        Numbers(json, "control", control ?? []);
    }

    private static void Numbers(Utf8JsonWriter json, string name, IEnumerable<double> values)
    {
        json.WriteStartArray(name);
        foreach (double value in values)
            json.WriteNumberValue(Math.Round(value, Decimals));
        json.WriteEndArray();
    }

    private static void Optional(Utf8JsonWriter json, string name, decimal? value)
    {
        if (value is { } number)
            json.WriteNumber(name, Rounded(number));
        else
            json.WriteNull(name);
    }

    private static decimal Rounded(decimal value) => Math.Round(value, Decimals);
}
