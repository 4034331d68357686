using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Tests.Season.Programme;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Weeding;

public sealed class PastControlTests
{
    private static readonly WeedingWishes s_wishes = new() { Weeds = ["spurge-spotted", "eclipta"] };

    [Fact]
    public void What_went_on_lately_still_stops_what_it_is_rated_on_and_then_fades()
    {
        SetupWeed spurge = Setup(("oryzalin-spray", Years.DemoDay.AddDays(-14))).Weeds[0];
        Assert.Equal(52, spurge.Control.Length);
        Assert.InRange(spurge.Control[0], 0.8, 1);
        Assert.True(spurge.Control[12] < spurge.Control[0]);
        Assert.Equal(0, spurge.Control[20]);
    }

    [Fact]
    public void What_went_on_long_ago_or_was_rated_on_nothing_here_stops_nothing()
    {
        Assert.All(Setup(("oryzalin-spray", Years.DemoDay.AddYears(-1))).Weeds, weed =>
            Assert.True(weed.Control.All(control => control == 0))
        );
        Assert.All(Setup(("sethoxydim-over-top", Years.DemoDay.AddDays(-7))).Weeds, weed =>
            Assert.True(weed.Control.All(control => control == 0))
        );
    }

    [Fact]
    public void The_better_of_two_counts()
    {
        ImmutableArray<double> both = Setup(
            ("oryzalin-spray", Years.DemoDay.AddDays(-70)),
            ("oxadiazon-granule", Years.DemoDay.AddDays(-7))
        )
            .Weeds[0]
            .Control;
        ImmutableArray<double> one = Setup(("oxadiazon-granule", Years.DemoDay.AddDays(-7))).Weeds[0].Control;
        Assert.True(both.Zip(one).All(pair => pair.First >= pair.Second));
    }

    [Fact]
    public void What_came_through_season_after_season_is_not_credited_any_more()
    {
        PastApplication failed = new(
            "oryzalin-spray",
            Years.DemoDay.AddDays(-14),
            "escapes",
            WordSet.Of("spurge-spotted")
        )
        {
            CameThrough = "many",
            SeasonsRunning = 3,
        };
        ImmutableArray<SetupWeed> weeds = Setup(failed).Weeds;
        Assert.All(weeds[0].Control, control => Assert.Equal(0, control));
        Assert.InRange(Setup(failed with { SeasonsRunning = 1 }).Weeds[0].Control[0], 0.8, 1);
    }

    private static WeedingSetup Setup(params (string Treatment, DateOnly Day)[] past) =>
        Setup([.. past.Select(use => new PastApplication(use.Treatment, use.Day, "clean", WordSet.Empty))]);

    private static WeedingSetup Setup(params PastApplication[] past)
    {
        VisitArea area = Years.DemoYard with { Past = [.. past] };
        return AreaWeeding
            .Of(
                AreaReading.Of(area, Years.DemoDay, ShippedRules.Knowledge),
                Years.DemoDay,
                ShippedRules.Knowledge,
                s_wishes
            )
            .Value!.Setup;
    }
}
