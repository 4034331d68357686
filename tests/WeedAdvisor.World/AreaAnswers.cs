using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.World;

/// <summary>Areas with answers: made from words, and changed one answer at a time.</summary>
public static class AreaAnswers
{
    /// <summary>Answers of one word each.</summary>
    public static ImmutableSortedDictionary<string, Answer> Of(IEnumerable<KeyValuePair<string, string>> answers) =>
        answers.ToImmutableSortedDictionary(one => one.Key, one => Word(one.Value), StringComparer.Ordinal);

    /// <summary>Answers of one word each.</summary>
    public static ImmutableSortedDictionary<string, Answer> Of(params (string Question, string Word)[] answers) =>
        Of(answers.Select(one => KeyValuePair.Create(one.Question, one.Word)));

    /// <summary>An answer of one word.</summary>
    public static Answer Word(string word) => new Answer.Words(WordSet.Of(word));

    public static VisitArea With(this VisitArea area, string question, Answer answer) =>
        area with
        {
            Answers = area.Answers.SetItem(question, answer),
        };

    public static VisitArea With(this VisitArea area, string question, params string[] words) =>
        area.With(question, new Answer.Words(WordSet.Of(words)));

    public static VisitArea With(this VisitArea area, string question, decimal number) =>
        area.With(question, new Answer.Number(number));

    public static VisitArea With(this VisitArea area, string question, DateOnly date) =>
        area.With(question, new Answer.Date(date));

    public static VisitArea Without(this VisitArea area, string question) =>
        area with
        {
            Answers = area.Answers.Remove(question),
        };

    /// <summary>The area with other weeds: known to come, but not up yet.</summary>
    public static VisitArea Expecting(this VisitArea area, params string[] weeds) =>
        area with
        {
            Weeds = [.. weeds.Select(weed => new WeedSeen(weed, "expected", null))],
        };
}
