using System.Text.Json;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Planning.Nursery;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Reports.Json;
using WeedAdvisor.Reports.Plan;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Nursery;

/// <summary>The plan of a nursery as JSON; <c>docs/json.md</c> describes it.</summary>
public static class NurseryJson
{
    /// <summary>The plan; the last line ends with a line feed.</summary>
    public static string Of(NurseryReport report) =>
        JsonText.Of(json =>
        {
            NurseryPlan plan = report.Plan;
            VisitHeadJson.Write(json, plan.Knowledge.Stamp, plan.Visit);
            json.WriteStartObject("nursery");
            json.WriteFigure("hoursPerWeekAsked", plan.Request.HoursPerWeek);
            json.WriteFigure("budgetUsdAsked", plan.Request.BudgetUsd);
            WriteOffer(json, new Offer(plan.HoursPerWeek, plan.SpentUsd, plan.Usd));
            json.WriteFigure("todayUsd", plan.TodayUsd);
            json.WriteFigure("leastUsd", plan.LeastUsd);
            json.WriteFigure("gapPercent", plan.GapPercent);
            json.WriteBoolean("cutShort", plan.IsCutShort);
            json.WriteBoolean("coarse", plan.IsCoarse);
            WriteOther(json, "tenHoursMore", plan.TenMore);
            WriteOther(json, "tenHoursFewer", plan.TenFewer);
            json.WriteList("hours", plan.Hours, row =>
            {
                json.WriteFigure("hoursPerWeek", row.HoursPerWeek);
                json.WriteFigure("usd", row.Usd);
            });
            json.WriteEndObject();
            json.WriteList("areas", plan.Areas, area => WriteArea(json, area));
            json.WriteList("sources", plan.Sources, source =>
            {
                json.WriteString("id", source.Place.Id);
                json.WriteFigure("savesUsd", source.Usd);
                json.WriteList("in", source.Worth, one =>
                {
                    json.WriteString("id", one.Area.Id);
                    json.WriteFigure("savesUsd", one.Usd);
                });
            });
            json.WriteList("notPlanned", plan.Unplanned, one =>
            {
                json.WriteString("id", one.Area.Id);
                json.WriteString("name", one.Area.Name);
                json.WriteTexts("why", one.Why);
                json.WriteTexts("toDo", one.ToDo);
            });
        });

    private static void WriteArea(Utf8JsonWriter json, SharedArea area)
    {
        YearCase year = area.Best.Case.Year;
        YearRounds rounds = area.Plan.Way.Plan.Rounds;
        json.WriteString("id", area.Area.Id);
        json.WriteString("name", area.Area.Name);
        json.WriteNumber("pots", year.Pots);
        json.WriteBoolean("potsAssumed", year.Block.Pots.From == Origin.Assumed);
        WriteOffer(json, area.Share);
        json.WriteFigure("todayUsd", area.TodayUsd);
        json.WriteFigure("givenUpUsd", area.GivenUpUsd);
        json.WriteStartObject("firstHours");
        json.WriteFigure("neglectUsd", area.First.NeglectUsd);
        json.WriteFigure("hoursPerWeek", area.First.Hours);
        json.WriteFigure("savesUsd", area.First.SavedUsd);
        json.WriteFigure("savesUsdPerHour", area.First.UsdAnHour);
        json.WriteEndObject();
        json.WriteStartObject("roundsWeeks");
        Weeks(json, "spring", rounds.Spring);
        Weeks(json, "summer", rounds.Summer);
        Weeks(json, "autumnAndWinter", rounds.AutumnAndWinter);
        json.WriteEndObject();
        json.WriteTexts("measures", area.Plan.Choice.Measures.Select(measure => measure.Id));
        json.WriteList("uses", area.Plan.Uses, use =>
        {
            json.WriteString("treatment", use.Treatment);
            json.WriteString("day", Figures.Day(use.Days.First));
            json.WriteString("lastDay", Figures.Day(use.Days.Last));
        });
        json.WriteTexts("preventivesNotPlanned", area.Best.Case.NoSeason);
        if (area.Mowing is { } mowing)
            PlanJson.WriteNearby(json, mowing);
    }

    private static void Weeks(Utf8JsonWriter json, string name, int? weeks)
    {
        if (weeks is { } told)
            json.WriteNumber(name, told);
        else
            json.WriteNull(name);
    }

    private static void WriteOther(Utf8JsonWriter json, string name, OtherHours? other)
    {
        if (other is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteFigure("hoursPerWeek", other.HoursPerWeek);
        json.WriteFigure("usd", other.Usd);
        json.WriteList("moved", other.Moved, one =>
        {
            json.WriteString("id", one.Area.Id);
            json.WriteFigure("hoursPerWeek", one.Hours);
        });
        json.WriteEndObject();
    }

    private static void WriteOffer(Utf8JsonWriter json, Offer offer)
    {
        json.WriteFigure("hoursPerWeek", offer.HoursPerWeek);
        json.WriteFigure("spentUsd", offer.SpentUsd);
        json.WriteFigure("usd", offer.Usd);
    }
}
