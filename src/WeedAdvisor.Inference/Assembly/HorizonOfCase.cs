using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// When an action is to be done, by the weeds on account of which rules speak for it: what takes from films and mats
/// what they live on comes before they are lifted; what is for weeds that are not about to seed is no work of today,
/// whatever else seeds beside them.
/// </summary>
internal static class HorizonOfCase
{
    private const string Weeding = "weeding";

    private static readonly WordSet s_spores = WordSet.Of([WaysOfLife.Spores]);
    private static readonly WordSet s_seedOrSpores = WordSet.Of([WaysOfLife.Seed, WaysOfLife.Spores]);
    private static readonly WordSet s_mats = WordSet.Of(["bryophyte", "alga"]);
    private static readonly WordSet s_aboutToSeed = WordSet.Of(["flowering", "seeding"]);

    // The kinds of practice that do so, in the order of the work.
    private const string TakesFromMats = "takes-from-mats";

    /// <summary>The horizon.</summary>
    public static Horizon Of(ActionCase one, CatalogueAction action, AreaReading reading, KnowledgeBase knowledge)
    {
        Horizon usual = HorizonChoice.Of(action, reading);
        if (action is not Practice practice || practice.Possible is "naming" or "at-once")
            return usual;
        if (practice.Possible == "any-time" && StarvingStep(one, action, reading, knowledge) is > 0)
            return reading.Standing.IsAnyMatAboutToSpread ? Horizon.Today : Horizon.ThisWeek;
        return usual == Horizon.Today && !Presses(one) ? Horizon.ThisWeek : usual;
    }

    /// <summary>
    /// Which step it is in taking from films and mats, where they are most of what stands here, what they live on:
    /// from 1, in the order of list <c>takes-from-mats</c>; only then is the mat lifted. What else stands among them is
    /// pulled before: 0. What is built or changed over a season is no step of a week; a hard floor is scrubbed first.
    /// Null else.
    /// </summary>
    public static int? StarvingStep(
        ActionCase one,
        CatalogueAction action,
        AreaReading reading,
        KnowledgeBase knowledge
    )
    {
        if (
            !reading.Standing.AreMostlyMats
            || reading.IsForPots == false
            || action is not Practice { When: "now" } practice
        )
            return null;
        int? step = practice.Kind == Weeding ? 0 : StepOf(practice.Kind, knowledge);
        bool isItsWork = step switch
        {
            null => false,
            // What is young among mats can wait for the water to be turned down; what flowers can't.
            0 => Ranking.Cleans(action)
                && Weeds(one)
                    .Any(weed =>
                        weed.Read("kind").IsAnyOf(s_mats) == Truth.No
                        && weed.Read("stage").IsAnyOf(s_aboutToSeed) == Truth.Yes
                    ),
            _ => Weeds(one).Any(weed => weed.Read("lives-by").IsAnyOf(s_spores) == Truth.Yes),
        };
        return isItsWork ? step : null;
    }

    /// <summary>
    /// The weeds on account of which rules speak for it, in ordinal order; empty where they speak of none.
    /// </summary>
    public static ImmutableArray<string> ForWeeds(ActionCase one) =>
        [
            .. Weeds(one)
                .Select(weed => weed.Read("id"))
                .OfType<Reading.Words>()
                .SelectMany(words => words.Value)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];

    private static int? StepOf(string kind, KnowledgeBase knowledge)
    {
        if (!knowledge.Vocabulary.TryGetValue(TakesFromMats, out WordList? list))
            return null;
        for (int place = 0; place < list.Words.Length; place++)
        {
            if (list.Words[place].Key == kind)
                return place + 1;
        }

        return null;
    }

    // Where rules speak of no single weed, the area decides.
    private static bool Presses(ActionCase one)
    {
        WeedFact[] weeds = [.. Weeds(one)];
        return weeds.Length == 0
            || weeds.Any(weed =>
                weed.Read("stage").IsAnyOf(s_aboutToSeed) == Truth.Yes
                && weed.Read("lives-by").IsAnyOf(s_seedOrSpores) != Truth.No
            );
    }

    private static IEnumerable<WeedFact> Weeds(ActionCase one) =>
        Evidences.ThatCount(one.Supports).SelectMany(WeedsSpokenOf.In);
}
