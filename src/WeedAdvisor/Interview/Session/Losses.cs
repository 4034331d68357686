using System.Collections.Immutable;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Session;

/// <summary>What an edit would drop, in words, so that it can be asked about first.</summary>
public static class Losses
{
    private const int MostNamed = 6;

    /// <summary>
    /// What goes with an area: <c>17 answers and 3 weeds</c>; null when nothing was said there but what the head of the
    /// visit says.
    /// </summary>
    public static string? OfArea(Visit visit, VisitArea area)
    {
        int own = area.Answers.Count(said => visit.Head.GetValueOrDefault(said.Key)?.Equals(said.Value) != true);
        string[] parts =
        [
            .. Count(own, "answer", "answers"),
            .. Count(area.Weeds?.Length ?? 0, "weed", "weeds"),
            .. Count(area.Past?.Length ?? 0, "earlier application", "earlier applications"),
        ];
        return parts switch
        {
            [] => null,
            [var one] => one,
            [.. var first, var last] => string.Join(", ", first) + " and " + last,
        };
    }

    /// <summary>
    /// The entries of a list that was told to a question: weeds, earlier applications, crops, several answers. Empty
    /// for other questions.
    /// </summary>
    public static ImmutableArray<string> Entries(KnowledgeBase knowledge, Question question, VisitArea area) =>
        question.Kind switch
        {
            QuestionKind.Weeds => [.. (area.Weeds ?? []).Select(seen => Answering.WeedName(knowledge, seen.Weed))],
            QuestionKind.Past => [.. (area.Past ?? []).Select(past => PastProduct.Of(past, knowledge).Name)],
            _ when Answering.TakesSeveral(question) => Texts(knowledge, question, WordsOf(area, question)),
            _ => [],
        };

    /// <summary>The entries of a list that another answer would drop.</summary>
    public static ImmutableArray<string> Entries(
        KnowledgeBase knowledge,
        Question question,
        VisitArea area,
        Answer answer
    ) =>
        answer is Answer.Words kept && Answering.TakesSeveral(question)
            ? Texts(knowledge, question, WordsOf(area, question).Where(word => !kept.Value.Contains(word)))
            : Entries(knowledge, question, area);

    /// <summary>Entries in one line; of many, the first few.</summary>
    public static string Named(ImmutableArray<string> entries) =>
        string.Join(", ", entries.Take(MostNamed))
        + (entries.Length > MostNamed ? $" and {entries.Length - MostNamed} more" : "");

    private static WordSet WordsOf(VisitArea area, Question question) =>
        area.Answers.GetValueOrDefault(question.Id) is Answer.Words words ? words.Value : WordSet.Empty;

    private static ImmutableArray<string> Texts(KnowledgeBase knowledge, Question question, IEnumerable<string> words)
    {
        ImmutableArray<AnswerChoice> choices = Answering.ChoicesOf(knowledge, question);
        return [.. words.Select(word => choices.FirstOrDefault(choice => choice.Id == word)?.Text ?? word)];
    }

    private static IEnumerable<string> Count(int count, string one, string many) =>
        count == 0 ? [] : [$"{count} {(count == 1 ? one : many)}"];
}
