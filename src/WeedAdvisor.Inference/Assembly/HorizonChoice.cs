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
            Practice { Possible: "naming" } => area.HasUnnamedWeed ? Horizon.Today : Horizon.ThisWeek,
            Practice { When: "now" } when Works.OnStanding(action) && area.HasWeedAboutToSeed => Horizon.Today,
            Practice { When: "now" } or Treatment => Horizon.ThisWeek,
            _ => Horizon.ThisSeason,
        };
}
