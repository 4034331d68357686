using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Inference.Ratings;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// What an action's place in the order of the work rests on, without its reasons and cautions: of an action that is
/// clear, or as if it were.
/// </summary>
internal sealed class Sketches(KnowledgeBase knowledge)
{
    /// <summary>The action as it would stand if it were clear.</summary>
    public ClearAction Of(ActionCase one, AreaReading reading, ImmutableArray<Escape> escapes)
    {
        CatalogueAction action = knowledge.ActionOf(one.Action)!;
        DayWeather day = DayWeather.Of(action, reading, knowledge);
        ImmutableArray<string> forWeeds = HorizonOfCase.ForWeeds(one);
        return new ClearAction
        {
            Action = one.Action,
            Status = one.Status,
            NotToday = day.NotToday,
            Conditions = day.Conditions,
            ComesAfterCleaning = one.ComesAfterCleaning,
            Cleans = Ranking.Cleans(action) && !HorizonChoice.IsRoundAbout(action, reading),
            IsHygiene = action is Practice { Kind: "hygiene" or "mowing" },
            StarvingStep = HorizonOfCase.StarvingStep(one, action, reading, knowledge),
            ForWeeds = forWeeds,
            MeetsMainWeed = reading.Standing.Main is { } main && forWeeds.Contains(main),
            IsAtOnce = HorizonChoice.IsAtOnce(action, reading),
            Names = reading.Standing.NamingComesFirst && action is Practice { Possible: "naming" },
            Horizon = HorizonOfCase.Of(one, action, reading, knowledge),
            OneOf = one.JobHere ?? Works.JobOf(action),
            LacksTool = reading.Lacks(action.NeedsEquipment),
            WorksOn = Works.On(action),
            Rank = 0,
            Certainty = one.Certainty,
            Effect = EffectOf(action, reading, escapes),
            Worth = 0,
            When = action.When,
            RecordUsd = CostEstimate.UsdOf(action, reading, knowledge),
            Because = [],
            Cautions = [],
            Sources = [],
        };
    }

    // Weeds to come count where stopping them is its work.
    private Effect EffectOf(CatalogueAction action, AreaReading reading, ImmutableArray<Escape> escapes) =>
        ExpectedEffect.Of(
            action,
            Works.On(action) == WorksOn.Standing ? reading.Area.Weeds : reading.SeenOrToCome,
            knowledge,
            escapes
        );
}
