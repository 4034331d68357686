using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Planning.Dates;

/// <summary>
/// Dates of a weeding: before the first of the weeds that are up drops seed. A seedling is taken to have just come up;
/// a young weed to have used half its time, a grown one that does not flower three quarters; what flowers is due at
/// once. These are the cautious ends of what is seen; a day that a weed can't keep is none (<see cref="SeedingDay"/>).
/// What does not live by seed has no such day: algae, what comes from below, and what nobody has named. Mosses,
/// liverworts and ferns press only once their cups or spores are there to be seen.
/// </summary>
internal static class WeedingDates
{
    private const int DaysInWeek = 7;
    private const string Flowering = "flowering";
    private const string Seeding = "seeding";
    private const decimal AllOfIt = 100;

    /// <summary>The dates of a weeding in an area.</summary>
    public static ActionDates Of(AreaReading area, DateOnly visit, KnowledgeBase knowledge)
    {
        Due[] due =
        [
            .. (area.Area.Weeds ?? [])
                .Select(seen =>
                    DueDay(seen, knowledge.Weeds[seen.Weed], area, visit, knowledge.Usual) is { } day
                        ? new Due(day, seen, knowledge.Weeds[seen.Weed])
                        : null
                )
                .OfType<Due>()
                .OrderBy(one => one.Day)
                // What sheds already presses before what flowers.
                .ThenBy(one => one.Seen.Stage != Seeding)
                .ThenBy(one => one.Weed.Name, StringComparer.Ordinal),
        ];
        return due.Length == 0
            ? ActionDates.Open(visit)
            : new ActionDates(visit, due[0].Day, Because(due[0].Day, due[0].Seen, due[0].Weed, visit), null);
    }

    private static string Because(DateOnly day, WeedSeen seen, Weed weed, DateOnly visit) =>
        IsOfSpores(weed) ? $"{weed.Name} is about to shed spores or splash cups, or already does"
        : seen.Stage == Seeding ? $"{weed.Name} is in seed"
        : seen.Stage == Flowering ? $"{weed.Name} is in flower, and seeds next"
        : day == visit ? $"{weed.Name} is about to seed"
        : $"{weed.Name} can have ripe seed by then";

    private static bool IsOfSpores(Weed weed) => weed.Kind is "bryophyte" or "fern";

    private static DateOnly? DueDay(WeedSeen seen, Weed weed, AreaReading area, DateOnly visit, UsualNumbers usual) =>
        seen.Stage switch
        {
            _ when !WaysOfLife.IsBySeed(weed, usual) && !IsOfSpores(weed) => null,
            Flowering or Seeding => visit,
            _ when IsOfSpores(weed) => null,
            "mature" => After(weed, area, visit, usual, usual[UsualIds.LeftWhenMature]),
            "seedling" => After(weed, area, visit, usual, AllOfIt),
            "young" => After(weed, area, visit, usual, usual[UsualIds.LeftWhenYoung]),
            _ => null,
        };

    private static DateOnly? After(
        Weed weed,
        AreaReading area,
        DateOnly visit,
        UsualNumbers usual,
        decimal percentLeft
    ) =>
        weed.WeeksToFirstSeed is { } weeks
            ? SeedingDay.Of(weed, area, visit, (int)(weeks.Low * DaysInWeek * percentLeft / AllOfIt), usual)
            : null;

    private sealed record Due(DateOnly Day, WeedSeen Seen, Weed Weed);
}
