using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Dates;
using WeedAdvisor.Planning.Tests.Season.Programme;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Dates;

public sealed class LastDayBeforeFilmTests
{
    private static readonly string[] s_countTheDays =
    [
        "open-days-before-the-film",
        "volatile-never-just-before-covering",
    ];

    [Theory]
    [InlineData("oryzalin-spray", 21)]
    [InlineData("flumioxazin-granule", 28)]
    [InlineData("trifluralin-granule", 42)]
    public void A_treatment_must_go_on_days_before_the_film(string treatment, int days)
    {
        VisitArea yard = Years.DemoYard;
        Assert.Equal(new DateOnly(2026, 11, 20).AddDays(-days), Dates(treatment, yard, Years.DemoDay).Latest);
    }

    // A label may ask for fewer days than vapour does.
    [Fact]
    public void What_gives_off_vapour_is_through_three_weeks_before_the_film_whatever_its_record_says()
    {
        Treatment volatileOne = ShippedRules.Knowledge.Treatments["flumioxazin-granule"] with
        {
            DaysBeforeCovering = 7,
            Volatile = "moderate",
        };
        var milder = ShippedRules.Knowledge with
        {
            Treatments = ShippedRules.Knowledge.Treatments.SetItem(volatileOne.Id, volatileOne),
        };
        Assert.Equal(
            new DateOnly(2026, 11, 20).AddDays(-22),
            ActionDates.Of(volatileOne, Years.DemoYard, Years.DemoDay, milder).Latest
        );
    }

    // The advice is asked anew on every day up to the film, and its bars are read.
    [Fact]
    public void The_day_printed_is_the_last_on_which_no_bar_counts_the_days_to_the_film() =>
        new RandomVisits(ShippedRules.Knowledge).Area.Sample(
            area =>
            {
                if (
                    area.Answers.GetValueOrDefault("covering-date") is not Answer.Date { Value: var film }
                    || film <= RandomVisits.Day
                )
                    return;
                LiveAdvice live = ShippedRules.Advisor.Open(AreaCase.Alone(RandomVisits.Day, area));
                string[] clear =
                [
                    .. live.Advice.Clear.Select(one => one.Action).Where(ShippedRules.Knowledge.Treatments.ContainsKey),
                ];
                var last = clear.ToDictionary(id => id, id => LastOf(id, area));
                for (DateOnly day = RandomVisits.Day; day < film && clear.Length > 0; day = day.AddDays(1))
                {
                    AreaAdvice advice = live.Change(AreaCase.Alone(day, area));
                    foreach (string id in clear)
                    {
                        bool barred = advice.Barred.Any(one =>
                            one.Action == id && one.Because.Any(reason => s_countTheDays.Contains(reason.Judgement))
                        );
                        Assert.Equal(day > (last[id] ?? film), barred);
                    }
                }
            },
            iter: Sizes.Of(60, 1000),
            threads: 1
        );

    private static DateOnly? LastOf(string treatment, VisitArea area) =>
        Dates(treatment, area, RandomVisits.Day).Latest;

    private static ActionDates Dates(string treatment, VisitArea area, DateOnly day) =>
        ActionDates.Of(ShippedRules.Knowledge.Treatments[treatment], area, day, ShippedRules.Knowledge);
}
