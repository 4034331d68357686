using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Facts;

/// <summary>The time of the year at a place, as rules may test it.</summary>
internal static class ClimateReadings
{
    /// <summary>Adds them to the readings of the site.</summary>
    /// <param name="readings">The readings.</param>
    /// <param name="region">The place; null where nobody said it.</param>
    /// <param name="date">The day.</param>
    public static void AddTo(Dictionary<string, Reading> readings, Region? region, DateOnly date)
    {
        // Where nobody says the place it is taken to lie in the north; how warm it is there nobody knows.
        readings["season"] = Reading.Of(region.HemisphereOrNorth().SeasonOf(date.Month));
        Reading notKnown = Reading.NotKnown(Need.Question(QuestionIds.Region));
        readings["mean-c"] = region is null ? notKnown : Reading.Of(region.MeanC(date.Month));
        readings["warming"] = region is null ? notKnown : Reading.Of(region.IsWarming(date.Month));
        readings["months-of"] = region is { BorrowsMonths: true } borrows
            ? Reading.Of(borrows.EmergenceZone)
            : Reading.Absent;
    }
}
