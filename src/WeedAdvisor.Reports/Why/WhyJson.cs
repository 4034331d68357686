using System.Collections.Immutable;
using System.Text.Json;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Json;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

/// <summary>Why an action stands where it stands, as JSON; <c>docs/json.md</c> describes it.</summary>
public static class WhyJson
{
    /// <summary>The JSON text; the last line ends with a line feed.</summary>
    public static string Of(VisitAdvice advice, CatalogueAction action, KnowledgeBase knowledge) =>
        JsonText.Of(json =>
        {
            var names = new Names(knowledge);
            json.WriteNumber("schemaVersion", JsonReport.SchemaVersion);
            StampJson.Write(json, advice.Knowledge);
            json.WriteString("visit", advice.Visit.Id);
            json.WriteString("date", Figures.Day(advice.Visit.Date));
            json.WriteString("action", action.Id);
            json.WriteString("name", action.Name);
            json.WriteString("kind", names.Kind(action.Id));
            json.WriteString("what", action.What);
            json.WriteList("areas", advice.Areas, area => WriteArea(json, advice, area, action, names));
            json.WriteTexts("cautions", action.Cautions);
            json.WriteTexts(
                "record",
                action is Treatment treatment ? Safety.LinesFor(treatment, advice.Visit.Date) : []
            );
            json.WriteTexts("safety", action is Treatment ? Safety.StandingLines : []);
        });

    private static void WriteArea(
        Utf8JsonWriter json,
        VisitAdvice advice,
        AreaAdvice area,
        CatalogueAction action,
        Names names
    )
    {
        ClearAction? clear = area.Clear.FirstOrDefault(one => one.Action == action.Id);
        BarredAction? barred = area.Barred.FirstOrDefault(one => one.Action == action.Id);
        WaitingAction? waiting = area.Waiting.FirstOrDefault(one => one.Action == action.Id);
        json.WriteString("id", area.Area.Id);
        json.WriteString("name", area.Area.Name);
        json.WriteString("what", action.WhatOn(area.Reading.Ground));
        json.WriteString("status", ActionStatuses.Word(area.StatusOf(action.Id)));
        json.WriteString("here", StatusWords.Of(area, action.Id, names.NeedInShort, advice.Visit.Date));
        json.WriteNeeds(waiting?.Needs ?? clear?.Unless ?? [], names);
        UntilJson.Write(json, barred?.Until);
        Reason[] reasons = [.. area.AllConclusions().Where(reason => reason.Action == action.Id)];
        json.WriteTexts("valuesFrom", ValuesRead.Of(action, reasons));
        foreach (ReasonKind kind in ReasonKind.All)
            WriteReasons(json, kind.Id, [.. reasons.Where(kind.Holds)], names);
    }

    private static void WriteReasons(Utf8JsonWriter json, string name, ImmutableArray<Reason> reasons, Names names) =>
        json.WriteList(name, reasons, reason =>
        {
            json.WriteString("judgement", reason.Judgement);
            json.WriteString("topic", reason.Topic);
            json.WriteString("text", reason.Text);
            json.WriteText("caution", reason.CautionText);
            json.WriteFigure("certainty", reason.Certainty);
            json.WriteBoolean("certain", reason.IsCertain);
            json.WriteNeeds(reason.Needs, names);
            json.WriteList("matched", reason.Matched, match => WriteMatch(json, match, names));
            json.WriteTexts("sources", reason.Sources);
        });

    private static void WriteMatch(Utf8JsonWriter json, MatchedPattern match, Names names)
    {
        json.WriteString("pattern", match.Pattern);
        json.WriteString("fact", match.Fact);
        json.WriteString("holds", Word(match.Truth));
        json.WriteList("tests", match.Tests, test =>
        {
            json.WriteString("attribute", test.Attribute);
            json.WriteString("expected", test.Expected);
            json.WriteString("read", test.Read);
            json.WriteString("holds", Word(test.Truth));
        });
        WriteReasons(json, "behind", match.Behind, names);
    }

    private static string Word(Truth truth) =>
        truth switch
        {
            Truth.Yes => "yes",
            Truth.NotKnown => "not-known",
            _ => "no",
        };
}
