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
    private const string Sky = "open-sky",
        Shade = "shade-cloth",
        Woody = "woody",
        WinterAnnual = "winter-annual",
        Biennial = "biennial";

    /// <summary>The day; null when there is none that it can keep.</summary>
    /// <param name="weed">The weed.</param>
    /// <param name="area">Where it stands.</param>
    /// <param name="visit">The day on which it was seen.</param>
    /// <param name="growth">Days of growth that it needs from then.</param>
    /// <param name="usual">What is taken for usual.</param>
    public static DateOnly? Of(Weed weed, AreaReading area, DateOnly visit, int growth, UsualNumbers usual)
    {
        int most = usual.Whole(UsualIds.SeedPresses);
        if (weed.Kind == Woody || growth > most || RestsUntilSpring(weed, area, visit, usual))
            return null;
        bool isOpen = area.Cover is Sky or Shade;
        decimal floor = weed.GrowthFloorC ?? usual[UsualIds.GrowthFloor];
        bool dies = weed is { Frost: FrostFate.Killed, Underground: false };
        DateOnly day = visit;
        for (int grown = 0; grown < growth; day = day.AddDays(1))
        {
            if (day > visit.AddDays(most) || (dies && FrostDays.IsFrosty(area, day)))
                return null;
            if (!isOpen || area.Region is not { } region || region.MeanC(day.Month) >= floor)
                grown++;
        }

        return day;
    }

    // What needs many weeks flowers after a winter as a rosette; what needs fewer, such as bittercress and chickweed,
    // seeds whenever it is mild.
    private static bool RestsUntilSpring(Weed weed, AreaReading area, DateOnly visit, UsualNumbers usual) =>
        weed is { LifeCycle: WinterAnnual or Biennial, WeeksToFirstSeed: { } weeks }
        && weeks.Low >= usual[UsualIds.RosetteWeeks]
        && area.Region is { } region
        && region.Hemisphere.NorthernMonth(visit.Month) >= usual[UsualIds.RosetteMonth];
}
