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
    private const string Hygiene = "hygiene",
        NoStock = "none-present",
        Strip = "noncrop-strip",
        WhenEmpty = "when-empty",
        BoughtStock = "bought-stock";

    /// <summary>The horizon of an action, before anything is asked of what must come before it.</summary>
    public static Horizon Of(CatalogueAction action, AreaReading area) =>
        action switch
        {
            Practice { Possible: "habit" } or Practice { When: "standing", Possible: "any-time" } => Horizon.Habit,
            // Where mix and pots lie ready, the next potting is prepared now.
            Practice { Possible: "at-potting" } when area.IsForPots != false => Horizon.AtPotting,
            Practice { Possible: "next-batch" } when area.Stock != NoStock => Horizon.NextBatch,
            Practice { Possible: WhenEmpty } when area.Stock != NoStock => Horizon.WhenEmpty,
            Practice { Possible: "at-once" } => Horizon.Today,
            Practice { Possible: "naming" } => area.Standing.NamingComesFirst ? Horizon.Today : Horizon.ThisWeek,
            Practice { When: "now" } practice when IsPressing(practice, area) => Horizon.Today,
            Practice { When: "now" } or Treatment => Horizon.ThisWeek,
            _ => Horizon.ThisSeason,
        };

    /// <summary>
    /// Whether it is done before all other work. A bought lot is set apart first, but never carried about in flower or
    /// seed: that is pulled where it stands.
    /// </summary>
    public static bool IsAtOnce(CatalogueAction action, AreaReading area) =>
        action is Practice { Possible: "at-once" } practice
        && !(area.Standing.IsAnyAboutToSeed && practice.Tags.Contains(BoughtStock));

    private static bool IsPressing(Practice practice, AreaReading area) =>
        Works.OnStanding(practice)
        && area.Standing.IsAnyAboutToSeed
        && practice.Possible != WhenEmpty
        && !IsRoundAbout(practice, area);

    /// <summary>
    /// Whether it is work on the strips and verges round about, which waits until what stands here is out. On a strip,
    /// a bank or a path they are the area.
    /// </summary>
    public static bool IsRoundAbout(CatalogueAction action, AreaReading area) =>
        action is Practice { Kind: Hygiene or "mowing" } practice
        && Works.OnStanding(practice)
        && practice.Places.Contains(Strip)
        && !area.IsVerge;
}
