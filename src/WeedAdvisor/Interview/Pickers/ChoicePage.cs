using System.Collections.Immutable;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Pickers;

/// <summary>An answer on a list that can be picked.</summary>
/// <param name="Id">The answer's id; null for <c>none of these</c>.</param>
/// <param name="Text">Its text.</param>
/// <param name="IsMarked">Whether it is the answer, or one of them.</param>
public sealed record ChoiceEntry(string? Id, string Text, bool IsMarked);

/// <summary>A question with a list of answers: what stands on the list, and what picking does.</summary>
public static class ChoicePage
{
    /// <summary>
    /// The list as it now stands. A question that takes several answers ends with <c>none of these</c>.
    /// </summary>
    public static ImmutableArray<ChoiceEntry> Of(InterviewSession session, Question question)
    {
        WordSet? said = Said(session, question);
        IEnumerable<ChoiceEntry> choices = Answering
            .ChoicesOf(session.Knowledge, question)
            .Select(choice => new ChoiceEntry(choice.Id, choice.Text, said?.Contains(choice.Id) == true));
        return Answering.TakesSeveral(question)
            ? [.. choices, new ChoiceEntry(null, "none of these", said is { Count: 0 })]
            : [.. choices];
    }

    /// <summary>Picks an entry: the one answer, or one more or fewer of several.</summary>
    public static void Pick(InterviewSession session, Question question, ChoiceEntry entry)
    {
        WordSet words;
        if (entry.Id is null)
            words = WordSet.Empty;
        else if (!Answering.TakesSeveral(question))
            words = WordSet.Of(entry.Id);
        else if (entry.IsMarked)
            words = WordSet.Of((Said(session, question) ?? WordSet.Empty).Where(word => word != entry.Id));
        else
            words = WordSet.Of([.. Said(session, question) ?? WordSet.Empty, entry.Id]);

        // Taking the last tick away does not say that there is none: that has an entry of its own.
        if (words.Count == 0 && (entry.Id is not null || entry.IsMarked))
            session.Clear(question);
        else
            session.Say(question.Id, new Answer.Words(words));
    }

    private static WordSet? Said(InterviewSession session, Question question) =>
        session.Area.Answers.GetValueOrDefault(question.Id) is Answer.Words words ? words.Value : null;
}
