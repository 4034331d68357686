using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Planning.Dates;

/// <summary>
/// Dates of a weeding: before the first of the weeds that are up drops seed. A seedling is taken to have just come up;
/// a young weed to have used half its time; a grown one is due at once. These are the cautious ends of what is seen.
/// </summary>
internal static class WeedingDates
{
    private const int DaysInWeek = 7;

    /// <summary>The dates of a weeding in an area.</summary>
    public static ActionDates Of(VisitArea area, DateOnly visit, KnowledgeBase knowledge)
    {
        (DateOnly Day, string Weed)[] due =
        [
            .. (area.Weeds ?? [])
                .Select(seen => (Day: DueDay(seen, knowledge.Weeds[seen.Weed], visit), Weed: knowledge.Weeds[seen.Weed].Name))
                .Where(one => one.Day is not null)
                .Select(one => (one.Day!.Value, one.Weed))
                .OrderBy(one => one.Item1)
                .ThenBy(one => one.Weed, StringComparer.Ordinal),
        ];
        return due.Length == 0
            ? ActionDates.Open(visit)
            : new ActionDates(visit, due[0].Day, Because(due[0].Day, due[0].Weed, visit), null);
    }

    private static string Because(DateOnly day, string weed, DateOnly visit) => day == visit
        ? $"{weed} is about to seed, or already does"
        : $"{weed} can have ripe seed by then";

    private static DateOnly? DueDay(WeedSeen seen, Weed weed, DateOnly visit) => seen.Stage switch
    {
        "mature" or "flowering" or "seeding" => visit,
        "seedling" => After(weed, visit, 1m),
        "young" => After(weed, visit, 0.5m),
        _ => null,
    };

    private static DateOnly? After(Weed weed, DateOnly visit, decimal share) =>
        weed.WeeksToFirstSeed is { } weeks ? visit.AddDays((int)(weeks.Low * DaysInWeek * share)) : null;
}
