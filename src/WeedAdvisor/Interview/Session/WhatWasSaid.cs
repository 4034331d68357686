using System.Collections.Immutable;
using WeedAdvisor.Interview.Earlier;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Session;

/// <summary>What has been said in an area, in words: answers, weeds seen, earlier uses.</summary>
public static class WhatWasSaid
{
    /// <summary>What has been said to a question in an area; null when nothing has.</summary>
    public static string? To(KnowledgeBase knowledge, Question question, VisitArea area) =>
        question.Kind switch
        {
            QuestionKind.Weeds => area.Weeds is { } weeds
                ? weeds.IsEmpty
                    ? "none seen"
                    : string.Join("; ", weeds.Select(w => Answering.Weed(knowledge, w)))
                : null,
            QuestionKind.Past => area.Past is { } past
                ? past.IsEmpty
                    ? "none"
                    : string.Join("; ", past.Select(p => OfUse(knowledge, p)))
                : null,
            _ => area.Answers.GetValueOrDefault(question.Id) is { } answer
                ? Answering.Text(knowledge, question, answer)
                : null,
        };

    /// <summary>An earlier application, in one line.</summary>
    public static string OfUse(KnowledgeBase knowledge, PastApplication past)
    {
        string?[] parts =
        [
            PastProduct.Of(past, knowledge).Name,
            past.Date is { } date ? Answering.Date(date) : "day not known",
            .. PastFields
                .More.Where(field => field.IsTold(past))
                .Select(field => field.Text(new Telling(knowledge, DateOnly.MaxValue), past)),
            PastResults.TextOf(past.Result),
            past.Escaped.Count == 0
                ? null
                : "came through: " + string.Join(" and ", past.Escaped.Select(w => Answering.WeedName(knowledge, w))),
        ];
        return string.Join(", ", parts.OfType<string>());
    }
}
