using System.Text.Json;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Planning.Dates;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Json;

/// <summary>A clear action as JSON.</summary>
internal static class ClearJson
{
    public static void Write(
        Utf8JsonWriter json,
        ClearAction action,
        Names names,
        AreaReading reading,
        ActionDates? dates
    )
    {
        json.WriteString("action", action.Action);
        json.WriteString("name", names.Action(action.Action));
        json.WriteString("kind", names.Kind(action.Action));
        json.WriteText("what", names.Record(action.Action)?.WhatOn(reading.Ground));
        json.WriteString("status", ActionStatuses.Word(action.Status));
        json.WriteNeeds(action.Unless, names, "unless");
        json.WriteNumber("rank", action.Rank);
        json.WriteString("horizon", Horizons.Word(action.Horizon));
        json.WriteText("oneOf", action.OneOf);
        json.WriteBoolean("lacksTool", action.LacksTool);
        json.WriteBoolean("waitsForCleaning", action.WaitsForCleaning);
        json.WriteFigure("worth", action.Worth);
        json.WriteFigure("certainty", action.Certainty);
        WriteEffect(json, action);
        json.WriteString("when", action.When);
        json.WriteTexts("notToday", action.NotToday);
        json.WriteTexts("conditions", action.Conditions);
        WriteDates(json, dates);
        CostJson.Write(json, names.Cost(action.Action, reading));
        json.WriteBecause(action.Because);
        json.WriteList("cautions", action.Cautions, caution =>
        {
            json.WriteString("text", caution.Text);
            json.WriteText("judgement", caution.Judgement);
            json.WriteBoolean("certain", caution.IsCertain);
        });
        json.WriteTexts("notWhere", names.NotWhere(action.Action));
        json.WriteTexts("fromMemory", names.Record(action.Action) is { } record ? Safety.ToConfirm(record) : []);
        json.WriteTexts("sources", action.Sources);
    }

    private static void WriteDates(Utf8JsonWriter json, ActionDates? dates)
    {
        json.WriteStartObject("dates");
        json.WriteText("earliest", Day(dates?.Earliest));
        // What is clear is held back by nothing; the key stays for those who read it.
        json.WriteText("earliestBecause", null);
        json.WriteText("latest", Day(dates?.Latest));
        json.WriteText("latestBecause", dates?.LatestBecause);
        json.WriteText("lookAgain", Day(dates?.LookAgain));
        json.WriteEndObject();
    }

    private static string? Day(DateOnly? date) => date is { } day ? Figures.Day(day) : null;

    private static void WriteEffect(Utf8JsonWriter json, ClearAction action)
    {
        json.WriteStartObject("effect");
        json.WriteString("on", Works.Word(action.WorksOn));
        json.WriteFigure("ofStanding", action.ReductionOfStanding);
        json.WriteFigure("ofComing", action.ReductionOfComing);
        json.WriteFigure("counted", action.EffectCounted);
        json.WriteList("parts", action.Effect.Parts, part =>
        {
            json.WriteString("weed", part.Weed);
            json.WriteFigure("weight", part.Weight);
            json.WriteFigure("lowPercent", part.LowPercent);
            json.WriteFigure("highPercent", part.HighPercent);
            json.WriteTexts("sources", part.Sources);
        });
        json.WriteEndObject();
    }
}
