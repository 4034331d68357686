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
    /// <summary>Sorts every weed of the catalogue by the treatment's ratings.</summary>
    public static RatedWeeds Of(Treatment treatment, KnowledgeBase knowledge)
    {
        ILookup<string, string> byGrade = knowledge.Weeds.Values.ToLookup(
            weed => TreatmentControl.GradeOf(treatment, weed, knowledge) ?? "",
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
