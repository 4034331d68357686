using System.Text.Json;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Rates.Units;
using WeedAdvisor.Reports.Json;
using WeedAdvisor.Reports.Season;
using Figures = WeedAdvisor.Reports.Text.Figures;

namespace WeedAdvisor.Reports.Plan;

/// <summary>The plans of a visit as JSON; <c>docs/json.md</c> describes it.</summary>
public static class PlanJson
{
    /// <summary>All areas; the last line ends with a line feed.</summary>
    public static string Of(PlanReport report) =>
        JsonText.Of(json =>
        {
            VisitHeadJson.Write(json, report.Knowledge.Stamp, report.Visit);
            json.WriteList("areas", report.Areas, area => WriteArea(json, area));
        });

    private static void WriteArea(Utf8JsonWriter json, AreaPlanned area)
    {
        json.WriteString("id", area.Area.Id);
        json.WriteString("name", area.Area.Name);
        json.WriteTexts("refused", area.Refusals);
        if (area.Plan is not { } plan)
            return;
        YearCase year = plan.Case.Year;
        json.WriteString("from", Figures.Day(year.Day));
        json.WriteNumber("pots", year.Pots);
        json.WriteBoolean("potsAssumed", year.Block.Pots.From == Origin.Assumed);
        json.WriteFigure("wageUsdPerHour", year.WageUsd);
        json.WriteTexts("weeds", year.Weeds.Counted.Select(weed => weed.Weed.Id));
        json.WriteTexts("preventivesNotPlanned", plan.Case.NoSeason);
        json.WriteStartObject("today");
        WriteWay(json, year, plan.Today);
        json.WriteEndObject();
        if (plan.Best is { } best)
        {
            json.WriteStartObject("plan");
            WriteBest(json, year, best);
            json.WriteFigure("leastUsdPer1000Pots", plan.LeastUsd);
            json.WriteFigure("gapPercent", plan.GapPercent);
            json.WriteBoolean("proven", plan.IsProven);
            json.WriteEndObject();
        }

        json.WriteList("wouldDo", plan.WouldDo, way => WriteWay(json, year, way));
        json.WriteNumber("choicesPriced", plan.Looked);
        json.WriteNumber("choicesSearched", plan.Searched);
        json.WriteBoolean("cutShort", plan.IsCutShort);
        json.WriteList("leftOut", plan.LeftOut, one =>
        {
            json.WriteString("action", one.Action);
            json.WriteFigure("costsUsdPer1000Pots", one.CostsUsd);
            json.WriteFigure("savesUsdPer1000Pots", one.SavesUsd);
        });
        json.WriteList("otherKinds", plan.RunnersUp, one =>
        {
            json.WriteString("kind", one.Kind);
            json.WriteFigure("dearerUsdPer1000Pots", one.DearerUsd);
            WriteWay(json, year, one.Way);
        });
        WriteQuestions(json, area.Questions);
    }

    private static void WriteBest(Utf8JsonWriter json, YearCase year, PlannedWay best)
    {
        WriteWay(json, year, best.Way);
        json.WriteTexts("measures", best.Choice.Measures.Select(measure => measure.Id));
        json.WriteList("uses", best.Uses, use =>
        {
            json.WriteString("treatment", use.Treatment);
            json.WriteString("day", Figures.Day(use.Days.First));
            json.WriteString("lastDay", Figures.Day(use.Days.Last));
            json.WriteFigure("usdPer1000Pots", use.Usd);
            WriteAmounts(json, UseAmounts.Of(year, use, best.Uses.TakeWhile(one => one != use)));
        });
        json.WriteList("covers", best.Choice.Measures, measure =>
        {
            json.WriteString("practice", measure.Id);
            CoverAmount? amount = CoverAmount.Of(year, measure);
            json.WriteFigure("cubicMetresLow", amount?.CubicM.Low);
            json.WriteFigure("cubicMetresHigh", amount?.CubicM.High);
        });
        json.WriteList("rounds", RoundHours.Of(year, best.Way), part =>
        {
            json.WriteString("part", PartName(part.Part));
            json.WriteNumber("rounds", part.Rounds);
            json.WriteFigure("hoursAWeek", part.HoursAWeek);
            json.WriteFigure("longestRoundHours", part.LongestHours);
        });
        json.WriteList("work", best.Work, work =>
        {
            json.WriteString("day", Figures.Day(work.Day));
            json.WriteString("lastDay", Figures.Day(work.LastDay));
            json.WriteString("kind", SeasonWords.Kind(work.Kind));
            json.WriteText("action", work.Action);
            json.WriteString("text", work.Text);
        });
    }

    private static string PartName(PartOfYear part) =>
        part switch
        {
            PartOfYear.Spring => "spring",
            PartOfYear.Summer => "summer",
            _ => "autumnAndWinter",
        };

    // Kilograms and litres, by the sums of rate.
    private static void WriteAmounts(Utf8JsonWriter json, UseAmounts use)
    {
        json.WriteText("tool", use.Tool);
        json.WriteFigure("groundM2", use.GroundM2);
        json.WriteList("product", use.Ranges, range =>
        {
            string unit = range.Product.Low.Dimension == Dimension.Weight ? "kg" : "L";
            json.WriteString("unit", unit);
            json.WriteFigure("low", range.Product.Low.In(unit));
            json.WriteFigure("high", range.Product.High.In(unit));
        });
        json.WriteText("noProduct", use.NoProduct);
        json.WriteFigure("fullTanks", use.Tanks?["full-tanks"].Value.Value);
        json.WriteFigure("tankLitres", use.TankLitres);
        json.WriteFigure("sprayLitresHa", use.SprayLitresHa);
        json.WriteFigure("waterLitresLow", use.WaterLitres?.Low);
        json.WriteFigure("waterLitresHigh", use.WaterLitres?.High);
    }

    private static void WriteQuestions(Utf8JsonWriter json, PlanQuestions questions)
    {
        json.WriteTexts("waiting", questions.Blocked);
        json.WriteTexts("waitingFor", questions.BlockedBy);
        json.WriteFigure("waitingSaveAtMostUsdPer1000Pots", questions.MostSavedUsd);
        json.WriteList("answersTried", questions.Tried, one =>
        {
            json.WriteString("question", one.Question);
            json.WriteString("answer", one.Answer);
            json.WriteFigure("changeUsdPer1000Pots", one.ChangeUsd);
            json.WriteBoolean("otherWork", one.HasOtherWork);
        });
        json.WriteTexts("questionsNotTried", questions.NotTried);
        if (questions.Source is { } source)
            WriteNearby(json, source);
    }

    /// <summary>What mowing round about is worth.</summary>
    internal static void WriteNearby(Utf8JsonWriter json, SourceCleaned source)
    {
        json.WriteStartObject("nearby");
        json.WriteString("practice", source.Action);
        json.WriteNumber("times", source.Times);
        json.WriteFigure("costsUsdPer1000Pots", source.CostsUsd);
        json.WriteFigure("savesUsdPer1000Pots", source.SavesUsd);
        json.WriteEndObject();
    }

    private static void WriteWay(Utf8JsonWriter json, YearCase year, Way way)
    {
        json.WriteStartObject("roundsWeeks");
        Weeks(json, "spring", way.Plan.Rounds.Spring);
        Weeks(json, "summer", way.Plan.Rounds.Summer);
        Weeks(json, "autumnAndWinter", way.Plan.Rounds.AutumnAndWinter);
        json.WriteEndObject();
        json.WriteNumber("firstRoundOverWeeks", way.Plan.SpreadWeeks);
        json.WriteFigure("usdPer1000Pots", way.Usd);
        json.WriteFigure("hoursPer1000Pots", way.Hours);
        json.WriteFigure("busiestWeekHours", PlanLimits.BusiestWeekHours(year, way));
        json.WriteFigure("spentUsd", PlanLimits.SpentUsd(year, way));
        json.WriteFigure("measuresUsdPer1000Pots", way.MeasuresUsd);
        json.WriteFigure("weedingUsdPer1000Pots", way.WeedingUsd);
        json.WriteFigure("lostUsdPer1000Pots", way.LostUsd);
        json.WriteFigure("nextYearUsdPer1000Pots", way.Of(CostKind.NextYear));
    }

    private static void Weeks(Utf8JsonWriter json, string name, int? weeks)
    {
        if (weeks is { } told)
            json.WriteNumber(name, told);
        else
            json.WriteNull(name);
    }
}
