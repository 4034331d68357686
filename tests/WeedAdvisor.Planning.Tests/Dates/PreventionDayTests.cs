using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Dates;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Dates;

/// <summary>
/// What stops seed is due before the first weed to come that it is rated on comes up: by the months of the records, not
/// by a figure beside them.
/// </summary>
public sealed class PreventionDayTests
{
    // Common chickweed comes up from September in the south-east, flexuous bittercress too (months of their records).
    [Theory]
    [InlineData("2026-06-10", "2026-08-31")]
    [InlineData("2026-08-27", "2026-08-31")]
    [InlineData("2026-10-02", "2026-10-02")]
    public void It_lies_there_before_the_month_in_which_the_first_comes_up(string day, string latest)
    {
        ActionDates dates = Of("isoxaben-spray", "chickweed-common", Day(day));
        Assert.Equal(Day(latest), dates.Latest);
        Assert.Contains("common chickweed", dates.LatestBecause, StringComparison.Ordinal);
    }

    [Fact]
    public void A_weed_on_which_it_is_rated_poor_or_not_at_all_sets_no_day() =>
        Assert.Null(Of("isoxaben-spray", "liverwort", Day("2026-06-10")).Latest);

    [Fact]
    public void What_stops_no_seed_has_no_such_day() =>
        Assert.Null(Of("pelargonic-acid-floor-spray", "chickweed-common", Day("2026-06-10")).Latest);

    private static ActionDates Of(string treatment, string weed, DateOnly day)
    {
        VisitArea area = ShippedRules.Visit("clean-yard-in-august").Areas[0] with
        {
            Weeds = [new WeedSeen(weed, WeedSeen.ToCome, null)],
        };
        return ActionDates.Of(
            ShippedRules.Knowledge.Treatments[treatment],
            AreaReading.Of(area, day, ShippedRules.Knowledge),
            day,
            ShippedRules.Knowledge
        );
    }

    private static DateOnly Day(string day) =>
        DateOnly.ParseExact(day, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
