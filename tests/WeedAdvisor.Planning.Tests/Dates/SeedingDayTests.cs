using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Dates;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Dates;

/// <summary>
/// A day by which a weed can have ripe seed is told only where it can keep it (common practice): frost kills spurge,
/// wood does not seed in its first year, a rosette waits for spring, and in the cold nothing grows.
/// </summary>
public sealed class SeedingDayTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    // West Michigan: means of -4 to 2 degrees from December to March, of 8 in April; first frost in October.
    [Theory]
    [InlineData("chickweed-common", "young", "2026-06-01", "2026-06-18")]
    [InlineData("chickweed-common", "young", "2026-01-10", "2026-04-18")]
    [InlineData("spurge-spotted", "young", "2026-07-01", "2026-07-15")]
    [InlineData("spurge-spotted", "young", "2026-10-20", null)]
    [InlineData("horseweed", "young", "2026-10-01", null)]
    [InlineData("horseweed", "flowering", "2026-10-01", "2026-10-01")]
    [InlineData("willow-cottonwood", "young", "2026-06-16", null)]
    [InlineData("willow-cottonwood", "mature", "2026-06-16", null)]
    public void A_day_is_told_only_where_the_weed_can_keep_it(string weed, string stage, string visit, string? due)
    {
        DateOnly? expected = due is null
            ? null
            : DateOnly.Parse(due, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(expected, DueOf(weed, stage, visit, "open-sky"));
    }

    // Under a roof nobody knows how warm it is: the earlier day is the careful one.
    [Fact]
    public void Under_a_roof_every_day_counts() =>
        Assert.Equal(new DateOnly(2026, 1, 27), DueOf("chickweed-common", "young", "2026-01-10", "glass-or-rigid"));

    [Fact]
    public void No_day_lies_half_a_year_ahead()
    {
        foreach (string weed in s_knowledge.Weeds.Keys)
        {
            foreach (string stage in new[] { "seedling", "young", "mature" })
            {
                DateOnly? due = DueOf(weed, stage, "2026-04-20", "open-sky");
                Assert.True(due is null || due <= new DateOnly(2026, 4, 20).AddDays(183), $"{weed}, {stage}: {due}");
            }
        }
    }

    private static DateOnly? DueOf(string weed, string stage, string visit, string cover)
    {
        VisitArea area = VisitArea.Blank("a", "A") with
        {
            Answers = ImmutableSortedDictionary
                .Create<string, Answer>(StringComparer.Ordinal)
                .Add("region", new Answer.Words(WordSet.Of(["west-michigan"])))
                .Add("place", new Answer.Words(WordSet.Of(["container-yard"])))
                .Add("cover", new Answer.Words(WordSet.Of([cover]))),
            Weeds = [new WeedSeen(weed, stage, 5)],
        };
        DateOnly day = DateOnly.Parse(visit, System.Globalization.CultureInfo.InvariantCulture);
        return ActionDates.Of(s_knowledge.Practices["hand-weed-now"], area, day, s_knowledge).Latest;
    }
}
