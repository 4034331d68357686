using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Dates;

/// <summary>
/// The day on which a weed can have ripe seed, after so many days of growth. In the open a day counts only where the
/// month is warm enough for it to grow; under a roof, and where the region is not told, every day counts: the earlier
/// day is the careful one. A day that the weed can't keep is none: frost kills it first, it is wood, it rests as a
/// rosette until spring, or half a year would have to pass.
/// </summary>
internal static class SeedingDay
{
    /// <summary>Days after which nothing presses any more: half a year.</summary>
    public const int MostDays = 182;

    private const string Sky = "open-sky",
        Shade = "shade-cloth",
        Woody = "woody",
        WinterAnnual = "winter-annual",
        Biennial = "biennial";

    // A winter annual that needs at least so many weeks flowers after a winter as a rosette; those that need fewer,
    // such as bittercress and chickweed, seed whenever it is mild.
    private const int LongWeeks = 9;
    private const int August = 8;

    /// <summary>The day; null when there is none that it can keep.</summary>
    /// <param name="weed">The weed.</param>
    /// <param name="area">Where it stands.</param>
    /// <param name="visit">The day on which it was seen.</param>
    /// <param name="growth">Days of growth that it needs from then.</param>
    /// <param name="usual">What is taken for usual.</param>
    public static DateOnly? Of(Weed weed, AreaReading area, DateOnly visit, int growth, UsualNumbers usual)
    {
        if (weed.Kind == Woody || growth > MostDays || RestsUntilSpring(weed, area, visit))
            return null;
        bool isOpen = area.Cover is Sky or Shade;
        decimal floor = weed.GrowthFloorC ?? usual[UsualIds.GrowthFloor];
        bool dies = weed is { Frost: FrostFate.Killed, Underground: false };
        DateOnly day = visit;
        for (int grown = 0; grown < growth; day = day.AddDays(1))
        {
            if (day > visit.AddDays(MostDays) || (dies && FrostDays.IsFrosty(area, day)))
                return null;
            if (!isOpen || area.Region is not { } region || region.MeanC(day.Month) >= floor)
                grown++;
        }

        return day;
    }

    private static bool RestsUntilSpring(Weed weed, AreaReading area, DateOnly visit) =>
        weed is { LifeCycle: WinterAnnual or Biennial, WeeksToFirstSeed.Low: >= LongWeeks }
        && area.Region is { } region
        && region.Hemisphere.NorthernMonth(visit.Month) >= August;
}
