using WeedAdvisor.Inference.Areas;

namespace WeedAdvisor.Planning.Dates;

/// <summary>
/// The days on which frost may reach the pots in an average year: under the open sky or shade cloth, from the average
/// first to the average last frost of the region, and not once film is on. What is not told protects the weeds.
/// </summary>
internal static class FrostDays
{
    private const string Sky = "open-sky",
        Shade = "shade-cloth";

    /// <summary>Whether a day lies in the frosts.</summary>
    public static bool IsFrosty(AreaReading area, DateOnly day)
    {
        if (area.Cover is not (Sky or Shade) || area.Region is not { FirstFrost: { } first, LastFrost: { } last })
            return false;
        DateOnly ends = CalendarDays.Next(last, day),
            begins = CalendarDays.Next(first, day);
        // Between the two, the last frost comes before the first of the next autumn.
        return ends < begins && !(area.CoveringOn is { } film && day >= film && film.AddYears(1) > day);
    }
}
