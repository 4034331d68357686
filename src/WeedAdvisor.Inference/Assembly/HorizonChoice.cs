using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// Says when an action can be done here: what its record says is possible, on the ground there is, and whether the
/// weeds that are up press.
/// </summary>
internal static class HorizonChoice
{
    private const string NoStock = "none-present";

    /// <summary>The horizon of an action, before anything is asked of what must come before it.</summary>
    public static Horizon Of(CatalogueAction action, AreaReading area) =>
        action switch
        {
            Practice { Possible: "habit" } or Practice { When: "standing", Possible: "any-time" } => Horizon.Habit,
            // Where mix and pots lie ready, the next potting is prepared now.
            Practice { Possible: "at-potting" } when area.IsForPots != false => Horizon.AtPotting,
            Practice { Possible: "next-batch" } when area.Stock != NoStock => Horizon.NextBatch,
            Practice { Possible: "when-empty" } when area.Stock != NoStock => Horizon.WhenEmpty,
            Practice { When: "now" } when Works.OnStanding(action) && HasWeedsAboutToSeed(area) => Horizon.Today,
            Practice { When: "now" } or Treatment => Horizon.ThisWeek,
            _ => Horizon.ThisSeason,
        };

    // Spores and splash cups count as seed: every watering carries them on.
    private static bool HasWeedsAboutToSeed(AreaReading area) =>
        (area.Area.Weeds ?? []).Any(seen => seen.IsAboutToSeed);
}
