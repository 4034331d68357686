using System.Text.Json;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Json;

/// <summary>The advice for one area as JSON.</summary>
internal static class AreaJson
{
    public static void Write(Utf8JsonWriter json, AreaAdvice area, Names names, DateOnly day)
    {
        json.WriteString("id", area.Area.Id);
        json.WriteString("name", area.Area.Name);
        KeepOutJson.Write(json, area.KeepOut, names);
        ComingJson.Write(json, area.Reading.Coming, names);
        CostJson.WriteSite(json, names.CostSite(area.Reading));
        json.WriteList("findings", area.Findings, finding => WriteFinding(json, finding));
        json.WriteList("clear", area.Clear, action =>
            ClearJson.Write(json, action, names, area.Reading, names.Dates(action.Action, area.Reading, day))
        );
        json.WriteList("waiting", area.Waiting, action =>
        {
            json.WriteString("action", action.Action);
            json.WriteString("status", ActionStatuses.Word(ActionStatus.Waits));
            json.WriteString("horizon", Horizons.Word(action.Horizon));
            json.WriteFigure("promise", action.Promise);
            json.WriteNeeds(action.Needs, names);
            json.WriteBecause(action.Because);
            json.WriteBecause(action.For, "for");
        });
        json.WriteList("barred", area.Barred, action =>
        {
            json.WriteString("action", action.Action);
            json.WriteString("status", ActionStatuses.Word(action.Status));
            json.WriteString("severity", StatusWords.Of(action.Severity));
            UntilJson.Write(json, action.Until);
            json.WriteTexts("otherWays", action.OtherWays);
            json.WriteBecause(action.Because);
            json.WriteTexts("sources", action.Sources);
        });
        json.WriteList("notAdvised", area.NotAdvised, action =>
        {
            json.WriteString("action", action.Action);
            json.WriteString("status", ActionStatuses.Word(ActionStatus.NotAdvised));
            json.WriteBecause(action.For, "for");
            json.WriteBecause(action.Against, "against");
        });
        json.WriteList("becomesPossible", BecomingPossible.Of(area), action =>
        {
            json.WriteString("action", action.Action);
            UntilJson.Write(json, action.Until);
            json.WriteString("then", ActionStatuses.Word(action.After));
        });
        json.WriteList("conflicts", area.Conflicts, conflict =>
        {
            json.WriteString("action", conflict.Action);
            json.WriteBecause(conflict.For, "for");
            json.WriteBecause(conflict.Against, "against");
        });
        json.WriteList("cautions", area.Cautions, caution =>
        {
            json.WriteString("text", caution.Text);
            json.WriteBoolean("certain", caution.IsCertain);
            json.WriteBecause([caution.Because]);
        });
        json.WriteList("notes", AreaNotes.Of(names, area.Reading), note =>
        {
            json.WriteString("of", note.Of);
            json.WriteString("name", note.Name);
            json.WriteTexts("texts", note.Texts);
        });
        json.WriteList("gaps", area.Gaps, gap =>
        {
            json.WriteString("kind", KindOf(gap.Kind));
            json.WriteText("subject", gap.Subject);
            json.WriteString("text", gap.Text);
        });
        WriteQuestion(json, area.NextQuestion);
    }

    private static void WriteFinding(Utf8JsonWriter json, AreaFinding finding)
    {
        json.WriteString("id", finding.Id);
        json.WriteString("text", finding.Text);
        json.WriteFigure("certainty", finding.Certainty);
        json.WriteBoolean("certain", finding.IsCertain);
        json.WriteBecause(finding.Because);
    }

    private static void WriteQuestion(Utf8JsonWriter json, NextQuestion? question)
    {
        if (question is null)
        {
            json.WriteNull("nextQuestion");
            return;
        }

        json.WriteStartObject("nextQuestion");
        json.WriteString("id", question.Id);
        json.WriteString("text", question.Text);
        json.WriteString("why", question.Why);
        json.WriteTexts("mayBring", question.MayBring);
        json.WriteList("outcomes", question.Outcomes, outcome =>
        {
            json.WriteString("answer", outcome.Answer);
            json.WriteTexts("brings", outcome.Brings);
            json.WriteTexts("drops", outcome.Drops);
            json.WriteBoolean("reorders", outcome.Reorders);
        });
        json.WriteEndObject();
    }

    private static string KindOf(GapKind kind) =>
        kind switch
        {
            GapKind.Contradiction => "contradiction",
            GapKind.WeedWithoutAnswer => "weed-without-answer",
            GapKind.WeedWithoutRating => "weed-without-rating",
            GapKind.WeedLeft => "weed-left",
            GapKind.NoTreatment => "no-treatment",
            _ => "nothing-clear",
        };
}
