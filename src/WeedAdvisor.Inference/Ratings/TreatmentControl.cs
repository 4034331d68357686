using System.Collections.Immutable;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Ratings;

/// <summary>How well a treatment controls a weed, by its published ratings.</summary>
public static class TreatmentControl
{
    /// <summary>
    /// The grade that counts: the middle one where sources disagree, the lower middle one of an even number.
    /// </summary>
    /// <returns>Id of a step of the scale; null when no rating is published.</returns>
    public static string? GradeOf(Treatment treatment, Weed weed, KnowledgeBase knowledge) =>
        MiddleOf(WeedRatings.Of(treatment, weed), knowledge);

    /// <summary>The grade that counts of ratings that speak of the same; null when there are none.</summary>
    internal static string? MiddleOf(IEnumerable<Rating> ratings, KnowledgeBase knowledge)
    {
        string[] ordered =
        [
            .. ratings.Select(rating => rating.Grade).OrderBy(grade => knowledge.Scale[grade].ReductionPercent.Low),
        ];
        return ordered.Length > 0 ? ordered[(ordered.Length - 1) / 2] : null;
    }

    /// <summary>
    /// The grade that counts in an area in which the weed came through sites of action although they are rated good on
    /// it: of a treatment that has another site only that one is credited, by what is published of its active alone.
    /// </summary>
    /// <param name="treatment">The treatment.</param>
    /// <param name="weed">The weed.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="escapes">What came through in the area.</param>
    /// <returns>Id of a step of the scale; null when nothing is published of what still counts.</returns>
    public static string? GradeOf(
        Treatment treatment,
        Weed weed,
        KnowledgeBase knowledge,
        ImmutableArray<Escape> escapes
    )
    {
        HashSet<string> lapsed =
        [
            .. escapes
                .Where(escape => escape.HasLapsed && escape.Weed == weed.Id)
                .Select(escape => escape.Site)
                .OfType<string>(),
        ];
        if (!treatment.Actives.Any(active => active.Group is { } group && lapsed.Contains(group)))
            return GradeOf(treatment, weed, knowledge);
        HashSet<string> left =
        [
            .. treatment
                .Actives.Where(active => active.Group is not { } group || !lapsed.Contains(group))
                .Select(active => active.Name),
        ];
        return knowledge
            .Treatments.Values.Where(record =>
                record.Actives is [var only] && left.Contains(only.Name) && record.Role == treatment.Role
            )
            .Select(record => GradeOf(record, weed, knowledge))
            .OfType<string>()
            .OrderBy(grade => knowledge.Scale[grade].ReductionPercent.Low)
            .LastOrDefault();
    }

    /// <summary>
    /// The reduction that this grade stands for, percent; null when nothing is published of what still counts.
    /// </summary>
    public static Span? PercentOf(
        Treatment treatment,
        Weed weed,
        KnowledgeBase knowledge,
        ImmutableArray<Escape> escapes
    ) => GradeOf(treatment, weed, knowledge, escapes) is { } grade ? knowledge.Scale[grade].ReductionPercent : null;

    /// <summary>The reduction that the grade stands for, percent; null when no rating is published.</summary>
    public static Span? PercentOf(Treatment treatment, Weed weed, KnowledgeBase knowledge) =>
        GradeOf(treatment, weed, knowledge) is { } grade ? knowledge.Scale[grade].ReductionPercent : null;
}
