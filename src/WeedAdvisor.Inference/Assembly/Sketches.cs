using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Inference.Ratings;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// What an action's place in the order of the work rests on, without its reasons and cautions: of an action that is
/// clear, or as if it were.
/// </summary>
internal sealed class Sketches(KnowledgeBase knowledge)
{
    private static readonly WordSet s_spores = WordSet.Of([WaysOfLife.Spores]);

    /// <summary>The action as it would stand if it were clear.</summary>
    public ClearAction Of(ActionCase one, AreaReading reading, ImmutableArray<Escape> escapes)
    {
        CatalogueAction action = knowledge.ActionOf(one.Action)!;
        DayWeather day = DayWeather.Of(action, reading, knowledge);
        int? starving = StarvingStep(one, action, reading);
        return new ClearAction
        {
            Action = one.Action,
            Status = one.Status,
            NotToday = day.NotToday,
            Conditions = day.Conditions,
            ComesAfterCleaning = one.ComesAfterCleaning,
            Cleans = Ranking.Cleans(action) && !HorizonChoice.IsRoundAbout(action, reading),
            IsHygiene = action is Practice { Kind: "hygiene" or "mowing" },
            StarvingStep = starving,
            Names = reading.HasUnnamedWeed && action is Practice { Possible: "naming" },
            Horizon = HorizonChoice.Of(action, reading, starving is not null),
            OneOf = Works.JobOf(action),
            LacksTool = reading.Lacks(action.NeedsEquipment),
            WorksOn = Works.On(action),
            Rank = 0,
            Certainty = one.Certainty,
            Effect = EffectOf(action, reading, escapes),
            Worth = 0,
            When = action.When,
            CostUsd = CostEstimate.UsdOf(action, reading, knowledge),
            Hours = CostEstimate.HoursOf(action, reading),
            Because = [],
            Cautions = [],
            Sources = [],
        };
    }

    // Water first, then feed, then air (osu-lw-control): only then is the mat lifted.
    private static int? StarvingStep(ActionCase one, CatalogueAction action, AreaReading reading)
    {
        int? step = action switch
        {
            Practice { Kind: "watering" } => 1,
            Practice { Kind: "feeding" } => 2,
            Practice { Kind: "air-and-spacing" } => 3,
            _ => null,
        };
        return step is not null && reading.IsMostlyMats && SpeaksOfMats(one) ? step : null;
    }

    private static bool SpeaksOfMats(ActionCase one) =>
        Evidences
            .ThatCount(one.Supports)
            .SelectMany(WeedsSpokenOf.In)
            .Any(weed => weed.Read("lives-by").IsAnyOf(s_spores) == Truth.Yes);

    // Weeds to come count where stopping them is its work.
    private Effect EffectOf(CatalogueAction action, AreaReading reading, ImmutableArray<Escape> escapes) =>
        ExpectedEffect.Of(
            action,
            Works.On(action) == WorksOn.Standing ? reading.Area.Weeds : reading.SeenOrToCome,
            knowledge,
            escapes
        );
}
