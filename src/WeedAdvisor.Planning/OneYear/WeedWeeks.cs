using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>A weed through a way, week by week.</summary>
/// <param name="Weed">The weed.</param>
/// <param name="Emergence">Seedlings that come up in 1000 pots in each week where nothing stops them.</param>
/// <param name="Held">Share of them that covers and preventives stop, 0 to 1, by week.</param>
public sealed record WeedWeeks(Weed Weed, ImmutableArray<double> Emergence, ImmutableArray<double> Held)
{
    /// <summary>All weeds of a year that come up in it, in the order of the year.</summary>
    /// <param name="year">The year.</param>
    /// <param name="plan">What is done in it.</param>
    public static ImmutableArray<WeedWeeks> Of(YearCase year, WayPlan plan)
    {
        int first = WeedTraits.WeekOf(year.Day);
        return
        [
            .. year
                .Weeds.Counted.Select(weed => new WeedWeeks(
                    weed.Weed,
                    [
                        .. Enumerable
                            .Range(first, year.Weeks)
                            .Select(week => weed.Traits.ExpectedEmergence(week % WeedTraits.WeeksInYear)),
                    ],
                    WayControl.Of(year, plan, weed, Variation.None)
                ))
                .Where(weed => weed.Emergence.Any(seedlings => seedlings > 0)),
        ];
    }
}
