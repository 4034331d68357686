using System.Collections.Immutable;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Tests.Season.Programme;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Weeding;

public sealed class PastControlTests
{
    [Fact]
    public void What_went_on_lately_still_stops_what_it_is_rated_on_and_then_fades()
    {
        ImmutableArray<double> spurge = Spurge(("oryzalin-spray", Years.DemoDay.AddDays(-14)));
        Assert.Equal(52, spurge.Length);
        Assert.InRange(spurge[0], 0.8, 1);
        Assert.True(spurge[12] < spurge[0]);
        Assert.Equal(0, spurge[20]);
    }

    [Fact]
    public void What_went_on_long_ago_or_was_rated_on_nothing_here_stops_nothing()
    {
        Assert.All(Spurge(("oryzalin-spray", Years.DemoDay.AddYears(-1))), control => Assert.Equal(0, control));
        Assert.All(Spurge(("sethoxydim-over-top", Years.DemoDay.AddDays(-7))), control => Assert.Equal(0, control));
    }

    [Fact]
    public void The_better_of_two_counts()
    {
        ImmutableArray<double> both = Spurge(
            ("oryzalin-spray", Years.DemoDay.AddDays(-70)),
            ("oxadiazon-granule", Years.DemoDay.AddDays(-7))
        );
        ImmutableArray<double> one = Spurge(("oxadiazon-granule", Years.DemoDay.AddDays(-7)));
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
        Assert.All(Spurge(failed), control => Assert.Equal(0, control));
        Assert.InRange(Spurge(failed with { SeasonsRunning = 1 })[0], 0.8, 1);
    }

    private static ImmutableArray<double> Spurge(params (string Treatment, DateOnly Day)[] past) =>
        Spurge([.. past.Select(use => new PastApplication(use.Treatment, use.Day, "clean", WordSet.Empty))]);

    private static ImmutableArray<double> Spurge(params PastApplication[] past)
    {
        VisitArea area = Years.DemoYard with { Past = [.. past] };
        const int weeks = 52;
        ImmutableArray<double> control = PastControl.Of(
            ShippedRules.Knowledge.Weeds["spurge-spotted"],
            PastControl.Acting(area, Years.DemoDay, ShippedRules.Knowledge),
            EscapesOfArea.Of(area.Past, ShippedRules.Knowledge),
            weeks,
            ShippedRules.Knowledge
        );
        return control.IsEmpty ? [.. new double[weeks]] : control;
    }
}
