using System.Collections.Immutable;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Tests.Season.Programme;

public sealed class WeekWordsTests
{
    private static readonly SeasonYear s_year = new(new DateOnly(2026, 4, 14));

    [Theory]
    [InlineData("2026-04-14", 0, 0)]
    [InlineData("2026-04-20", 0, 0)]
    [InlineData("2026-04-21", 1, 1)]
    [InlineData("2026-07", 11, 15)]
    [InlineData("july", 11, 15)]
    [InlineData("2026-12-20..2027-01-04", 35, 37)]
    [InlineData("2026-01-01..2026-04-30", 0, 2)]
    public void Days_months_and_spans_name_every_week_that_they_touch(string text, int from, int to) =>
        Assert.Equal(Enumerable.Range(from, to - from + 1), WeekWords.Read(text, s_year).Weeks!.ToArray());

    [Fact]
    public void Several_are_put_together() =>
        Assert.Equal([0, 11, 12, 13, 14, 15], WeekWords.Read("july, 2026-04-15", s_year).Weeks!.ToArray());

    [Theory]
    [InlineData("", "names no week")]
    [InlineData("week 3", "cannot read 'week 3'")]
    [InlineData("2026-13", "cannot read '2026-13'")]
    [InlineData("2026-08-01..2026-07-01", "the later day first")]
    [InlineData("2028-01", "outside the plan")]
    public void What_is_no_week_of_the_plan_is_refused(string text, string said)
    {
        (ImmutableSortedSet<int>? weeks, string? problem) = WeekWords.Read(text, s_year);
        Assert.Null(weeks);
        Assert.Contains(said, problem, StringComparison.Ordinal);
    }
}
