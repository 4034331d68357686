using System.Collections.Immutable;
using System.Text.Json;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Certainties;
using WeedAdvisor.Knowledge;
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
            var words = new Words(names, new ConditionSentences(knowledge));
            VisitHeadJson.Write(json, advice.Knowledge, advice.Visit);
            json.WriteString("action", action.Id);
            json.WriteString("name", action.Name);
            json.WriteString("kind", names.Kind(action.Id));
            json.WriteString("what", action.What);
            json.WriteList("areas", advice.Areas, area => WriteArea(json, advice, area, action, words, knowledge));
            json.WriteTexts("cautions", action.Cautions);
            json.WriteTexts(
                "record",
                action is Treatment treatment ? Safety.LinesFor(names, treatment, advice.Visit.Date) : []
            );
            json.WriteTexts("safety", action is Treatment ? Safety.StandingLines : []);
        });

    private static void WriteArea(
        Utf8JsonWriter json,
        VisitAdvice advice,
        AreaAdvice area,
        CatalogueAction action,
        Words words,
        KnowledgeBase knowledge
    )
    {
        Names names = words.Names;
        NearSection? near = NearSection.In(
            knowledge,
            words.Sentences,
            NearSection.LookedAt(advice.Visit, area),
            area,
            action.Id
        );
        ImmutableArray<Reason> reasons = [.. area.AllConclusions().Where(reason => reason.Action == action.Id)];
        var spoken = SpokenVerdict.Of(names, area, action, reasons, near?.Spoken(action.Id), advice.Visit.Date);
        ClearAction? clear = area.Clear.FirstOrDefault(one => one.Action == action.Id);
        BarredAction? barred = area.Barred.FirstOrDefault(one => one.Action == action.Id);
        WaitingAction? waiting = area.Waiting.FirstOrDefault(one => one.Action == action.Id);
        json.WriteString("id", area.Area.Id);
        json.WriteString("name", area.Area.Name);
        json.WriteString("what", action.WhatOn(area.Reading.Ground));
        json.WriteString("status", ActionStatuses.Word(area.StatusOf(action.Id)));
        json.WriteString("spoken", spoken.Text.Text);
        json.WriteText("instead", spoken.Instead?.Action);
        json.WriteString("here", StatusWords.Of(area, action.Id, names.NeedInShort, advice.Visit.Date));
        json.WriteNeeds(waiting?.Needs ?? clear?.Unless ?? [], names);
        UntilJson.Write(json, barred?.Until);
        json.WriteTexts("valuesFrom", ValuesRead.Of(action, reasons));
        WriteWorking(json, reasons, clear);
        foreach (ReasonKind kind in ReasonKind.All)
            WriteReasons(json, kind.Id, [.. reasons.Where(kind.Holds)], words);
        json.WriteList("nearest", near?.Rules(action.Id) ?? [], rule =>
        {
            json.WriteNumber("missed", rule.Missed);
            json.WriteNumber("open", rule.Open);
            WriteReason(json, rule.Reason, words);
        });
    }

    private static void WriteWorking(Utf8JsonWriter json, IEnumerable<Reason> reasons, ClearAction? clear)
    {
        CertaintyWorking working = WorkingSection.Of(reasons);
        json.WriteStartObject("working");
        WriteSteps(json, "for", working.For);
        WriteSteps(json, "against", working.Against);
        json.WriteFigure("certainty", working.Together);
        if (clear is not null)
        {
            json.WriteFigure("effect", clear.EffectCounted);
            json.WriteFigure("worth", clear.Worth);
        }

        json.WriteEndObject();
    }

    private static void WriteSteps(Utf8JsonWriter json, string name, ImmutableArray<CertaintyStep> steps) =>
        json.WriteList(name, steps, step =>
        {
            json.WriteString("judgement", step.Rule);
            json.WriteFigure("before", step.Before);
            json.WriteFigure("certainty", step.Certainty);
            json.WriteFigure("after", step.After);
        });

    private static void WriteReasons(Utf8JsonWriter json, string name, ImmutableArray<Reason> reasons, Words words) =>
        json.WriteList(name, reasons, reason => WriteReason(json, reason, words));

    private static void WriteReason(Utf8JsonWriter json, Reason reason, Words words)
    {
        json.WriteString("judgement", reason.Judgement);
        json.WriteString("topic", reason.Topic);
        json.WriteString("text", reason.Text);
        json.WriteText("caution", reason.CautionText);
        json.WriteFigure("certainty", reason.Certainty);
        json.WriteBoolean("certain", reason.IsCertain);
        json.WriteNeeds(reason.Needs, words.Names);
        json.WriteList("matched", reason.Matched, match => WriteMatch(json, match, words));
        json.WriteTexts("sources", reason.Sources);
    }

    private static void WriteMatch(Utf8JsonWriter json, MatchedPattern match, Words words)
    {
        json.WriteString("pattern", match.Pattern);
        json.WriteString("fact", match.Fact);
        json.WriteString("holds", TruthMark.Word(match.Truth));
        json.WriteList("sentences", words.Sentences.Of(match), sentence =>
        {
            json.WriteString("text", sentence.Text);
            json.WriteText("here", sentence.Here);
            json.WriteString("holds", TruthMark.Word(sentence.Truth));
        });
        json.WriteList("tests", match.Tests, test =>
        {
            json.WriteString("attribute", test.Attribute);
            json.WriteString("expected", test.Expected);
            json.WriteString("read", test.Read);
            json.WriteString("holds", TruthMark.Word(test.Truth));
        });
        WriteReasons(json, "behind", match.Behind, words);
    }

    private sealed record Words(Names Names, ConditionSentences Sentences);
}
