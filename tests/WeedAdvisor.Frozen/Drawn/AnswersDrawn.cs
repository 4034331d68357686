using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Frozen.Drawn;

/// <summary>Draws an answer to any question, as a visit file writes it.</summary>
internal static class AnswersDrawn
{
    private static readonly string[] s_houses = ["house-1", "house-2"];

    /// <summary>An answer; null to what is not answered in a word.</summary>
    public static string? Answer(KnowledgeBase knowledge, Question question, DateOnly date, Tape tape)
    {
        // Not by its member: commits before houses had names have no such kind of question.
        if (question.Kind.ToString() == "Name")
            return s_houses[tape.Below(s_houses.Length)];
        string[] words = question.Kind switch
        {
            QuestionKind.Region => [.. knowledge.Regions.Keys],
            QuestionKind.Crops => [.. knowledge.Crops.Keys],
            _ => [.. question.Choices.Select(choice => choice.Id)],
        };
        return question.Kind switch
        {
            QuestionKind.Weeds or QuestionKind.Past => null,
            QuestionKind.Number => Number(question, tape).ToString(CultureInfo.InvariantCulture),
            QuestionKind.Date => Day(date.AddDays(question.PastOnly ? -tape.Below(200) : tape.Below(200) - 60)),
            QuestionKind.AnyOf or QuestionKind.Crops => $"[{string.Join(", ", tape.Some(words, 3))}]",
            _ when words.Length == 0 => null,
            _ => words[tape.Below(words.Length)],
        };
    }

    private static decimal Number(Question question, Tape tape) =>
        question.Between is { } between
            ? decimal.Round(between.Low + ((between.High - between.Low) * tape.Below(100) / 100), 1)
            : tape.Below(30);

    /// <summary>A day as files write it.</summary>
    public static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
