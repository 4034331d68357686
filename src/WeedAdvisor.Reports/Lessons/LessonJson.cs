using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Json;

namespace WeedAdvisor.Reports.Lessons;

/// <summary>Lessons as JSON; <c>docs/json.md</c> describes it.</summary>
public static class LessonJson
{
    /// <summary>The lessons there are.</summary>
    public static string List(KnowledgeBase knowledge) =>
        JsonText.Of(json =>
        {
            json.WriteNumber("schemaVersion", JsonReport.SchemaVersion);
            StampJson.Write(json, knowledge.Stamp);
            json.WriteList("lessons", knowledge.Lessons, lesson =>
            {
                json.WriteString("id", lesson.Id);
                json.WriteString("title", lesson.Title);
                json.WriteNumber("steps", lesson.Steps.Length);
            });
        });

    /// <summary>A lesson, and a trainee's order held against the advice where there is one.</summary>
    public static string Of(Lesson lesson, AreaAdvice area, KnowledgeBase knowledge, ImmutableArray<string>? named) =>
        JsonText.Of(json =>
        {
            json.WriteNumber("schemaVersion", JsonReport.SchemaVersion);
            StampJson.Write(json, knowledge.Stamp);
            json.WriteString("lesson", lesson.Id);
            json.WriteString("title", lesson.Title);
            json.WriteString("visit", lesson.Visit);
            json.WriteString("area", lesson.Area);
            json.WriteString("about", lesson.About);
            json.WriteTexts("points", lesson.Points);
            ILookup<string, Reason> certain = area.AllConclusions()
                .Where(reason => reason.IsCertain)
                .ToLookup(reason => reason.Judgement, StringComparer.Ordinal);
            json.WriteList("steps", lesson.Steps, step =>
            {
                json.WriteString("ask", step.Ask);
                json.WriteString("judgement", step.Rule);
                json.WriteText("text", certain[step.Rule].FirstOrDefault()?.Text);
                json.WriteText("say", step.Say);
            });
            json.WriteTexts("safety", Safety.StandingLines);
            if (named is not { } order)
                return;
            var score = TraineeScore.Of(area, order);
            json.WriteTexts("named", order);
            json.WriteFigure("tauB", score.TauB);
            json.WriteTexts("first", score.First);
            json.WriteTexts("missed", score.Missed);
            json.WriteTexts("notClear", score.NotClear);
        });
}
