using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Planning.Tests.Season.Programme;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Season.Year;

public sealed class WeeklyAdviceTests
{
    private static readonly YearAssumptions s_assumed = YearAssumptions.Of(ShippedRules.Knowledge.Usual);

    [Fact]
    public void On_every_day_of_a_stretch_every_action_stands_as_on_its_first() =>
        Gen.Select(new RandomVisits(ShippedRules.Knowledge).Area, Gen.Int[0, ShippedRules.Knowledge.Regions.Count - 1])
            .Sample(
                (area, region) =>
                {
                    AreaThroughYear through = Through(area, ShippedRules.Knowledge.Regions.Values.ElementAt(region));
                    var year = new SeasonYear(RandomVisits.Day);
                    WeeklyAdvice weekly = WeeklyAdvice.Of(ShippedRules.Advisor, through, year);
                    LiveAdvice live = ShippedRules.Advisor.Open(through.On(year.From));
                    foreach (DateOnly day in DaysOf(weekly))
                        Assert.Equal(Standing(live.Change(through.On(day))), Standing(weekly.On(day)));
                },
                iter: Sizes.Of(2, 100),
                threads: 1
            );

    [Fact]
    public void The_rules_are_asked_for_far_fewer_days_than_the_year_has()
    {
        Assert.InRange(Years.DemoCase.Weekly.Stretches.Length, 10, 120);
        Assert.Equal(Years.DemoCase.Year.From, Years.DemoCase.Weekly.Stretches[0].From);
        Assert.Equal(Years.DemoCase.Year.LastDay, Years.DemoCase.Weekly.Stretches[^1].To);
    }

    // The last day of each stretch and one within it; in the long run every day.
    private static IEnumerable<DateOnly> DaysOf(WeeklyAdvice weekly) =>
        weekly.Stretches.SelectMany(stretch =>
        {
            int days = stretch.To.DayNumber - stretch.From.DayNumber;
            return Sizes.IsLong
                ? Enumerable.Range(0, days + 1).Select(stretch.From.AddDays)
                : [stretch.From.AddDays(days / 2), stretch.To];
        });

    private static AreaThroughYear Through(VisitArea area, Region region) =>
        new(
            AreaCase.Alone(RandomVisits.Day, area),
            AreaReading.Of(area, RandomVisits.Day, ShippedRules.Knowledge) with
            {
                Region = region,
            },
            s_assumed
        );

    // Told straight from the lists, action by action.
    private static string[] Standing(AreaAdvice advice) =>
        [
            .. advice
                .Clear.Select(one => $"{one.Action} {one.Status}")
                .Concat(advice.Waiting.Select(one => $"{one.Action} waits"))
                .Concat(advice.Barred.Select(one => $"{one.Action} {one.Status}"))
                .Concat(advice.NotAdvised.Select(one => $"{one.Action} not advised"))
                .Order(StringComparer.Ordinal),
        ];
}
