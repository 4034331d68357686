using System.Text.Json;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Unlock;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Json;
using WeedAdvisor.Reports.Why;

namespace WeedAdvisor.Reports.Unlock;

/// <summary>What would change how an action stands, as JSON; <c>docs/json.md</c> describes it.</summary>
public static class UnlockJson
{
    /// <summary>The JSON text; the last line ends with a line feed.</summary>
    public static string Of(Advisor advisor, VisitAdvice advice, CatalogueAction action) =>
        JsonText.Of(json =>
        {
            var sentences = new ConditionSentences(advisor.Knowledge);
            VisitHeadJson.Write(json, advice.Knowledge, advice.Visit);
            json.WriteString("action", action.Id);
            json.WriteString("name", action.Name);
            json.WriteList("areas", advice.Areas, area =>
            {
                Unlocks unlocks = Unlocks.Of(advisor, NearSection.LookedAt(advice.Visit, area), area, action.Id)!;
                json.WriteString("id", area.Area.Id);
                json.WriteString("name", area.Area.Name);
                json.WriteString("status", ActionStatuses.Word(area.StatusOf(action.Id)));
                UntilJson.Write(json, area.Barred.FirstOrDefault(one => one.Action == action.Id)?.Until);
                json.WriteString("reach", unlocks.ClearReach.ToString().ToLowerInvariant());
                Write(json, "clear", unlocks.Clear, sentences);
                Write(json, "bar", unlocks.Bar, sentences);
                Write(json, "first", unlocks.First, sentences);
            });
            json.WriteTexts("safety", action is Treatment ? Safety.StandingLines : []);
        });

    private static void Write(Utf8JsonWriter json, string name, Unlocked found, ConditionSentences sentences)
    {
        json.WriteStartObject(name);
        json.WriteBoolean("isSo", found.IsSo);
        json.WriteBoolean("cutShort", found.IsCutShort);
        json.WriteList("sets", found.Sets, set =>
        {
            json.WriteString("status", ActionStatuses.Word(set.Status));
            json.WriteList("changes", set.Changes, change =>
            {
                json.WriteString("question", change.Question.Id);
                json.WriteString("then", sentences.Answered(change.Question, change.Then));
                json.WriteText("now", change.IsUntold ? null : sentences.Answered(change.Question, change.Now));
                json.WriteText("changedBy", change.By is { } by ? WordOf(by) : null);
            });
        });
        json.WriteEndObject();
    }

    private static string WordOf(ChangedBy by) =>
        by switch
        {
            ChangedBy.Hand => "hand",
            ChangedBy.Time => "time",
            _ => "nobody",
        };
}
