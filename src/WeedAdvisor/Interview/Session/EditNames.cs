using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Session;

/// <summary>Names edits of a visit in a few words, by what differs before and after.</summary>
public static class EditNames
{
    /// <summary>What was edited.</summary>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="before">The visit before.</param>
    /// <param name="after">The visit afterwards.</param>
    public static string Of(KnowledgeBase knowledge, Visit before, Visit after)
    {
        if (before.Areas.FirstOrDefault(area => Find(after, area.Id) is null) is { } removed)
            return $"removing {removed.Name}";
        foreach (VisitArea area in after.Areas)
        {
            if (Find(before, area.Id) is not { } old)
                return $"adding {area.Name}";
            if (old.Name != area.Name)
                return $"naming {area.Name}";
            // A use that is told may answer another question too; the use is what was edited.
            if (
                knowledge
                    .Questions.Where(question => Differs(question, old, area))
                    .OrderBy(question => question.Kind is QuestionKind.Weeds or QuestionKind.Past ? 0 : 1)
                    .FirstOrDefault() is
                { } about
            )
            {
                return Of(about, area);
            }
        }

        return before.Units != after.Units ? "the visit as a whole" : "the visit's day, title or nursery";
    }

    /// <summary>The answer to a question in an area.</summary>
    public static string Of(Question question, VisitArea area) => $"{Label(question)} of {area.Name}";

    /// <summary>
    /// The answer to a question in an area, or in all of them when it was said at the head of the visit.
    /// </summary>
    internal static string Of(Question question, Visit before, Visit after, int area) =>
        Equals(before.Head.GetValueOrDefault(question.Id), after.Head.GetValueOrDefault(question.Id))
            ? Of(question, after.Areas[area])
            : $"{Label(question)} of the whole nursery";

    /// <summary>What a question is about, in a word or two.</summary>
    public static string Label(Question question) =>
        question.Kind switch
        {
            QuestionKind.Past => "earlier applications",
            _ => question.Id.Replace('-', ' '),
        };

    private static VisitArea? Find(Visit visit, string id) => visit.Areas.FirstOrDefault(area => area.Id == id);

    private static bool Differs(Question question, VisitArea before, VisitArea after) =>
        question.Kind switch
        {
            QuestionKind.Weeds => Differ(before.Weeds, after.Weeds),
            QuestionKind.Past => Differ(before.Past, after.Past),
            _ => !Equals(before.Answers.GetValueOrDefault(question.Id), after.Answers.GetValueOrDefault(question.Id)),
        };

    private static bool Differ<T>(ImmutableArray<T>? before, ImmutableArray<T>? after) =>
        before is null ? after is not null : after is null || !before.Value.SequenceEqual(after.Value);
}
