using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Season.Year;

public sealed class AreaThroughYearTests
{
    private static readonly DateOnly s_visit = new(2026, 4, 14);

    private static readonly Region s_region = new()
    {
        Id = "here",
        Name = "Here (invented)",
        Country = "us",
        EmergenceZone = "us-southeast",
        MeanTemperatureC = [.. Enumerable.Repeat(12m, 12)],
        LastFrost = "04-10",
        FirstFrost = "11-05",
        Sources = ["invented"],
        Where = Place.Whole("test"),
    };

    private static readonly YearAssumptions s_assumed = new()
    {
        StatedHoldsWeeks = 4,
        FlushStartsWeeksBeforeLastFrost = 4,
        FlushEndsWeeksAfterLastFrost = 4,
        RestStartsWeeksAfterFirstFrost = 3,
        EstablishedWeeksAfterPotting = 12,
    };

    [Theory]
    [InlineData("2026-11-19", "open-sky")]
    [InlineData("2026-11-20", "film-on")]
    [InlineData("2027-04-09", "film-on")]
    [InlineData("2027-04-10", "open-sky")]
    public void Film_goes_on_on_the_day_planned_and_comes_off_at_the_last_frost(string day, string cover)
    {
        VisitArea yard = Area(("cover", "open-sky"), ("covering-planned", "yes"));
        yard = yard with { Answers = yard.Answers.Add("covering-date", new Answer.Date(new DateOnly(2026, 11, 20))) };
        Assert.Equal(cover, Word(On(yard, day), "cover"));
    }

    [Fact]
    public void After_a_winter_the_next_film_is_planned_for_the_same_day()
    {
        VisitArea yard = Area(("cover", "open-sky"), ("covering-planned", "yes"));
        yard = yard with { Answers = yard.Answers.Add("covering-date", new Answer.Date(new DateOnly(2026, 11, 20))) };
        VisitArea spring = On(yard, "2027-05-01");
        Assert.Equal("yes", Word(spring, "covering-planned"));
        Assert.Equal(new Answer.Date(new DateOnly(2027, 11, 20)), spring.Answers["covering-date"]);
        Assert.Equal("film-on", Word(On(yard, "2028-01-10"), "cover"));
    }

    [Fact]
    public void Film_that_the_visit_found_on_goes_on_again_at_the_first_frost()
    {
        VisitArea house = Area(("place", "overwintering-house"), ("cover", "film-on"));
        var through = new AreaThroughYear(AreaCase.Alone(new DateOnly(2026, 2, 1), house), Read(house), s_assumed);
        Assert.Equal("film-on", Word(through.On(new DateOnly(2026, 3, 1)).Area, "cover"));
        VisitArea summer = through.On(new DateOnly(2026, 7, 1)).Area;
        Assert.Equal("open-sky", Word(summer, "cover"));
        Assert.Equal(new Answer.Date(new DateOnly(2026, 11, 5)), summer.Answers["covering-date"]);
        Assert.Equal("film-on", Word(through.On(new DateOnly(2026, 12, 1)).Area, "cover"));
    }

    [Fact]
    public void The_day_the_film_comes_off_may_be_stated()
    {
        VisitArea house = Area(("place", "overwintering-house"), ("cover", "film-on"));
        var through = new AreaThroughYear(
            AreaCase.Alone(s_visit, house),
            Read(house),
            s_assumed,
            new DateOnly(2026, 5, 1)
        );
        Assert.Equal("film-on", Word(through.On(new DateOnly(2026, 4, 30)).Area, "cover"));
        Assert.Equal("open-sky", Word(through.On(new DateOnly(2026, 5, 1)).Area, "cover"));
    }

    [Fact]
    public void A_growing_house_keeps_its_film_all_year() =>
        Assert.Equal(
            "film-on",
            Word(On(Area(("place", "growing-house"), ("cover", "film-on")), "2026-08-01"), "cover")
        );

    [Theory]
    [InlineData("2026-04-20", "hardened")]
    [InlineData("2026-06-01", "hardened")]
    [InlineData("2026-12-10", "dormant")]
    [InlineData("2027-02-20", "dormant")]
    [InlineData("2027-03-20", "bud-break-or-flush")]
    public void What_the_visit_says_of_growth_holds_for_a_month_and_then_the_frosts_tell(string day, string growth) =>
        Assert.Equal(growth, Word(On(Area(("growth-state", "hardened")), day), "growth-state"));

    // In the south the winter lies within one year: first frost on 25 May, last on 15 September.
    [Theory]
    [InlineData("2026-06-10", "hardened")]
    [InlineData("2026-06-20", "dormant")]
    [InlineData("2026-08-10", "dormant")]
    [InlineData("2026-08-25", "bud-break-or-flush")]
    [InlineData("2026-11-20", "hardened")]
    [InlineData("2027-01-15", "hardened")]
    [InlineData("2027-07-01", "dormant")]
    public void Growth_follows_the_frosts_of_the_south(string day, string growth)
    {
        VisitArea area = Area(("growth-state", "hardened"));
        var through = new AreaThroughYear(
            AreaCase.Alone(s_visit, area),
            Read(area) with
            {
                Region = s_region with { Hemisphere = Hemisphere.South, FirstFrost = "05-25", LastFrost = "09-15" },
            },
            s_assumed
        );
        VisitArea then = through.On(DateOnly.ParseExact(day, "yyyy-MM-dd")).Area;
        Assert.Equal(growth, Word(then, "growth-state"));
    }

    [Fact]
    public void Growth_that_no_frost_date_tells_is_not_known()
    {
        Region frostless = s_region with { LastFrost = null, FirstFrost = null };
        VisitArea area = Area(("growth-state", "hardened"));
        var through = new AreaThroughYear(
            AreaCase.Alone(s_visit, area),
            Read(area) with
            {
                Region = frostless,
            },
            s_assumed
        );
        Assert.Null(Word(through.On(new DateOnly(2026, 8, 1)).Area, "growth-state"));
    }

    [Fact]
    public void What_was_not_answered_stays_open_all_year()
    {
        VisitArea open = Area();
        for (int week = 0; week < SeasonYear.Weeks; week++)
            Assert.DoesNotContain(On(open, s_visit.AddDays(7 * week)).Answers.Keys, question =>
                question != "put-on-lately"
            );
    }

    [Fact]
    public void What_was_put_on_before_the_visit_has_lost_its_interval_a_week_later()
    {
        VisitArea open = Area();
        Assert.Null(Word(On(open, s_visit.AddDays(6)), "put-on-lately"));
        Assert.Equal("no", Word(On(open, s_visit.AddDays(7)), "put-on-lately"));
    }

    [Fact]
    public void Potted_plants_settle()
    {
        VisitArea potted = Area(("stock", "newly-potted"));
        potted = potted with { Answers = potted.Answers.Add("potted-on", new Answer.Date(new DateOnly(2026, 4, 1))) };
        Assert.Equal("newly-potted", Word(On(potted, "2026-06-20"), "stock"));
        Assert.Equal("established", Word(On(potted, "2026-06-24"), "stock"));
        Assert.Equal("unrooted-cuttings", Word(On(Area(("stock", "unrooted-cuttings")), "2027-01-01"), "stock"));
    }

    [Fact]
    public void Weeds_seen_are_expected_to_come_again()
    {
        VisitArea area = Area() with { Weeds = [new WeedSeen("spurge-spotted", "seeding", 12)] };
        Assert.Equal([new WeedSeen("spurge-spotted", "expected", null)], On(area, "2026-06-01").Weeds!.Value);
    }

    [Theory]
    [InlineData("azaleas", "2026-05-20", "bud-break-or-flush")]
    [InlineData("rhododendrons", "2026-07-01", "bud-break-or-flush")]
    [InlineData("azaleas", "2026-07-12", "hardened")]
    [InlineData("hollies", "2026-05-20", "hardened")]
    public void What_flushes_after_its_bloom_is_soft_for_longer(string crop, string day, string growth)
    {
        VisitArea area = Area(("stock", "established"), ("crops", crop), ("growth-state", "dormant"));
        AreaReading read = Read(area);
        var assumed = YearAssumptions.Of(ShippedRules.Knowledge.Usual, read.FlushesAfterBloom);
        var through = new AreaThroughYear(AreaCase.Alone(s_visit, area), read, assumed);
        Assert.Equal(growth, Word(through.On(DateOnly.ParseExact(day, "yyyy-MM-dd")).Area, "growth-state"));
    }

    private static VisitArea On(VisitArea area, string day) => On(area, DateOnly.ParseExact(day, "yyyy-MM-dd"));

    private static VisitArea On(VisitArea area, DateOnly day) =>
        new AreaThroughYear(AreaCase.Alone(s_visit, area), Read(area), s_assumed).On(day).Area;

    private static AreaReading Read(VisitArea area) =>
        AreaReading.Of(area, s_visit, ShippedRules.Knowledge) with
        {
            Region = s_region,
        };

    private static VisitArea Area(params (string Question, string Word)[] answers) =>
        VisitArea.Blank("a", "A") with
        {
            Answers = AreaAnswers.Of(answers),
        };

    private static string? Word(VisitArea area, string question) =>
        area.Answers.GetValueOrDefault(question) is Answer.Words words ? words.Value.Single() : null;
}
