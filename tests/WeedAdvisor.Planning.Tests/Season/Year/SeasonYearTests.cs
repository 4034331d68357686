using CsCheck;
using WeedAdvisor.Planning.Dates;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Tests.Season.Year;

public sealed class SeasonYearTests
{
    private static readonly SeasonYear s_year = new(new DateOnly(2026, 4, 14));

    [Fact]
    public void Every_day_falls_in_the_week_that_starts_at_most_six_days_before() =>
        Gen.Int[-400, 800]
            .Sample(days =>
            {
                DateOnly day = s_year.From.AddDays(days);
                int since = day.DayNumber - s_year.DayOf(s_year.WeekOf(day)).DayNumber;
                return since is >= 0 and < 7;
            });

    [Fact]
    public void The_first_week_from_a_day_starts_on_it_or_up_to_six_days_after() =>
        Gen.Int[-400, 800]
            .Sample(days =>
            {
                DateOnly day = s_year.From.AddDays(days);
                int until = s_year.DayOf(s_year.FirstWeekFrom(day)).DayNumber - day.DayNumber;
                return until is >= 0 and < 7;
            });

    [Theory]
    [InlineData("04-15", "2026-04-14", "2026-04-15")]
    [InlineData("04-14", "2026-04-14", "2026-04-14")]
    [InlineData("04-13", "2026-04-14", "2027-04-13")]
    [InlineData("02-29", "2026-04-14", "2027-02-28")]
    [InlineData("02-29", "2027-04-14", "2028-02-29")]
    public void A_day_of_the_calendar_comes_round_once_a_year(string monthAndDay, string from, string next) =>
        Assert.Equal(
            DateOnly.ParseExact(next, "yyyy-MM-dd"),
            CalendarDays.Next(monthAndDay, DateOnly.ParseExact(from, "yyyy-MM-dd"))
        );
}
