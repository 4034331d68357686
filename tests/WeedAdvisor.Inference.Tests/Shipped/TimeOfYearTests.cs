using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>
/// Rules tell the time of the year by season and warmth of the place. The months here were read by hand off the mean
/// temperatures in <c>regions.yaml</c>: flushes come with the warmth (osu-bc, neal-2005), so earlier in the south.
/// </summary>
public sealed class TimeOfYearTests
{
    [Theory]
    [InlineData("north-carolina-piedmont", "2 3 4 5", "8 9 10 11")]
    [InlineData("mobile-gulf-coast", "1 2 3 4", "8 9 10 11 12")]
    [InlineData("connecticut-river-valley", "3 4 5", "8 9 10")]
    [InlineData("dublin-east-coast", "2 3 4 5", "8 9 10")]
    [InlineData("melbourne-east", "7 8 9 10 11", "2 3 4 5 6")]
    public void Flushes_lie_ahead_when_the_place_warms_and_cools(string region, string summer, string cool)
    {
        Assert.Equal(summer, MonthsOf(region, "summer-flush-ahead"));
        Assert.Equal(cool, MonthsOf(region, "cool-season-flush-ahead"));
    }

    [Fact]
    public void Without_the_place_nobody_knows_how_warm_it_is() =>
        Assert.All(Enumerable.Range(1, 12), month => Assert.DoesNotContain("cool-season-flush-ahead", In(null, month)));

    [Fact]
    public void Half_a_year_later_the_south_has_the_season_of_the_north() =>
        Assert.All(Enumerable.Range(1, 12), month =>
            Assert.Equal(Hemisphere.North.SeasonOf(month), Hemisphere.South.SeasonOf(month > 6 ? month - 6 : month + 6))
        );

    private static string MonthsOf(string region, string finding) =>
        string.Join(' ', Enumerable.Range(1, 12).Where(month => In(region, month).Contains(finding)));

    private static IEnumerable<string> In(string? region, int month)
    {
        Visit spring = ShippedRules.Visit("magnolias-newly-potted-in-april");
        VisitArea yard = spring.Areas[0].Without(QuestionIds.Region) with
        {
            Weeds =
            [
                new WeedSeen("crabgrass-large", "expected", null),
                new WeedSeen("bittercress-hairy", "expected", null),
            ],
        };
        Visit moved = spring with
        {
            Date = new DateOnly(2026, month, 15),
            Areas = [region is null ? yard : yard.With(QuestionIds.Region, region)],
        };
        return ShippedRules
            .Advisor.Advise(moved)
            .Areas[0]
            .Findings.Where(finding => finding.IsCertain)
            .Select(finding => finding.Id);
    }
}
