using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Dates;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>
/// The weeks in which frost reaches the pots of an average year: under the open sky or shade cloth, from the average
/// first to the average last frost of the region, and not once film is on. What is not told protects the weeds.
/// </summary>
internal static class FrostWeeks
{
    private const int DaysInWeek = 7;

    /// <summary>Whether frost comes in each week of a year; empty where none does.</summary>
    public static ImmutableArray<bool> Of(AreaReading area, DateOnly day, int weeks)
    {
        ImmutableArray<bool> frost =
        [
            .. Enumerable.Range(0, weeks).Select(week => FrostDays.IsFrosty(area, day.AddDays(DaysInWeek * week))),
        ];
        return frost.Contains(true) ? frost : [];
    }

    /// <summary>Share of a weed's plants that dies in each week; empty where frost leaves it.</summary>
    public static ImmutableArray<double> Killing(Weed weed, ImmutableArray<bool> frost) =>
        weed is { Frost: FrostFate.Killed, Underground: false } && !frost.IsEmpty
            ? [.. frost.Select(comes => comes ? 1.0 : 0.0)]
            : [];
}
