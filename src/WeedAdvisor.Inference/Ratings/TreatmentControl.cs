using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Ratings;

/// <summary>How well a treatment controls a weed, by its published ratings.</summary>
public static class TreatmentControl
{
    /// <summary>The grade that counts: the middle one where sources disagree, the lower middle one of an even number.</summary>
    /// <returns>Id of a step of the scale; null when no rating is published.</returns>
    public static string? GradeOf(Treatment treatment, Weed weed, KnowledgeBase knowledge)
    {
        string[] ordered =
        [
            .. WeedRatings.Of(treatment, weed)
                .Select(rating => rating.Grade)
                .OrderBy(grade => knowledge.Scale[grade].ReductionPercent.Low),
        ];
        return ordered.Length > 0 ? ordered[(ordered.Length - 1) / 2] : null;
    }

    /// <summary>The reduction that the grade stands for, percent; null when no rating is published.</summary>
    public static Span? PercentOf(Treatment treatment, Weed weed, KnowledgeBase knowledge) =>
        GradeOf(treatment, weed, knowledge) is { } grade ? knowledge.Scale[grade].ReductionPercent : null;
}
