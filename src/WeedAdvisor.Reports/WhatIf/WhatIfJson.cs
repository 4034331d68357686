using System.Text.Json;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Json;
using WeedAdvisor.Reports.Text;
using WeedAdvisor.Reports.Why;

namespace WeedAdvisor.Reports.WhatIf;

/// <summary>What would be otherwise with other answers, as JSON; <c>docs/json.md</c> describes it.</summary>
public static class WhatIfJson
{
    /// <summary>The JSON text; the last line ends with a line feed.</summary>
    public static string Of(
        VisitAdvice now,
        VisitAdvice then,
        IReadOnlyCollection<(Question Question, Answer Answer)> answers,
        KnowledgeBase knowledge
    ) =>
        JsonText.Of(json =>
        {
            var sentences = new ConditionSentences(knowledge);
            var names = new Names(knowledge);
            VisitHeadJson.Write(json, now.Knowledge, now.Visit);
            json.WriteList("answers", answers, one =>
            {
                json.WriteString("question", one.Question.Id);
                json.WriteString("then", sentences.Answered(one.Question, one.Answer));
            });
            json.WriteList("areas", now.Areas.Zip(then.Areas), pair =>
            {
                var difference = AdviceDifference.Of(names, pair.First, pair.Second);
                json.WriteString("id", pair.First.Area.Id);
                json.WriteString("name", pair.First.Area.Name);
                json.WriteList("actions", difference.Moves, move =>
                {
                    json.WriteString("action", move.Action);
                    Write(json, "now", move.Now, move.Place);
                    Write(json, "then", move.Then, move.PlaceThen);
                });
                json.WriteList("rules", difference.Turns, turn =>
                {
                    json.WriteString("judgement", turn.Reason.Judgement);
                    json.WriteString("text", turn.Reason.Text);
                    json.WriteString("now", WordOf(turn.Now));
                    json.WriteString("then", WordOf(turn.Then));
                });
                json.WriteFigure("costUsdNow", difference.CostNow.Usd);
                json.WriteFigure("costUsdThen", difference.CostThen.Usd);
                json.WriteFigure("hoursNow", difference.CostNow.Hours);
                json.WriteFigure("hoursThen", difference.CostThen.Hours);
            });
            json.WriteTexts("safety", Safety.StandingLines);
        });

    private static void Write(Utf8JsonWriter json, string name, ActionStatus status, (Horizon Horizon, int Rank)? place)
    {
        json.WriteStartObject(name);
        json.WriteString("status", ActionStatuses.Word(status));
        json.WriteText("horizon", place is { } at ? Horizons.Word(at.Horizon) : null);
        if (place is { } ranked)
            json.WriteNumber("rank", ranked.Rank);
        else
            json.WriteNull("rank");
        json.WriteEndObject();
    }

    private static string WordOf(RuleStand stand) =>
        stand switch
        {
            RuleStand.Yes => "yes",
            RuleStand.Perhaps => "not-known",
            _ => "no",
        };
}
