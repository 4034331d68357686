using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Ratings;

/// <summary>Which weeds of the catalogue a treatment controls, by its published ratings.</summary>
/// <param name="ControlsWell">Weeds rated good.</param>
/// <param name="ControlsPartly">Weeds rated fair.</param>
/// <param name="Misses">Weeds rated poor or none.</param>
/// <param name="Unrated">Weeds for which no rating is published.</param>
internal sealed record RatedWeeds(WordSet ControlsWell, WordSet ControlsPartly, WordSet Misses, WordSet Unrated)
{
    /// <summary>
    /// Sorts every weed of the catalogue by the treatment's ratings: as <see cref="TreatmentControl.GradeOf(Treatment,
    /// Weed, KnowledgeBase)"/> says of each, but the ratings are gone through once, not once for every weed.
    /// </summary>
    public static RatedWeeds Of(Treatment treatment, KnowledgeBase knowledge)
    {
        var grades = treatment
            .Ratings.GroupBy(rating => rating.On, StringComparer.Ordinal)
            .ToDictionary(
                ratings => ratings.Key,
                ratings => TreatmentControl.MiddleOf(ratings, knowledge),
                StringComparer.Ordinal
            );
        Func<string, string?> gradeUnder = grades.GetValueOrDefault;
        ILookup<string, string> byGrade = knowledge.Weeds.Values.ToLookup(
            weed => WeedRatings.First(weed, gradeUnder) ?? "",
            weed => weed.Id,
            StringComparer.Ordinal
        );
        return new RatedWeeds(
            WordSet.Of(byGrade["good"]),
            WordSet.Of(byGrade["fair"]),
            WordSet.Of(byGrade["poor"].Concat(byGrade["none"])),
            WordSet.Of(byGrade[""])
        );
    }
}
