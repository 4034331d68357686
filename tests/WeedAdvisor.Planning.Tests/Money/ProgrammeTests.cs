using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Money;

public class ProgrammeTests
{
    private static readonly ImmutableArray<bool> s_always = [.. Enumerable.Repeat(true, 52)];
    private static readonly UsualNumbers s_usual = ShippedRules.Knowledge.Usual;
    private static readonly Treatment s_granule = ShippedRules.Knowledge.Treatments["isoxaben-trifluralin-granule"];

    private static readonly Gen<ImmutableArray<bool>> s_seasons = Gen
        .Bool.Array[52]
        .Select(up => up.ToImmutableArray());

    [Fact]
    public void It_goes_on_again_when_its_control_runs_out() =>
        Assert.Equal(
            [0, 10, 20],
            Programme
                .Of(s_granule with { UsesPerYear = 3 }, 0, [.. s_always.Take(30)], residualWeeks: 10, s_usual)
                .Weeks.AsEnumerable()
        );

    [Fact]
    public void It_waits_until_the_record_lets_it_go_on_again() =>
        Assert.Equal(
            [2, 14, 26],
            Programme
                .Of(
                    s_granule with
                    {
                        UsesPerYear = 9,
                        RepeatAfterDays = 84,
                    },
                    2,
                    [.. s_always.Take(38)],
                    residualWeeks: 4,
                    s_usual
                )
                .Weeks.AsEnumerable()
        );

    [Fact]
    public void It_ends_with_the_uses_of_the_year()
    {
        var programme = Programme.Of(s_granule with { UsesPerYear = 2 }, 0, s_always, residualWeeks: 8, s_usual);
        Assert.Equal([0, 9], programme.Weeks.AsEnumerable());
        Assert.True(programme.IsCapped);
    }

    [Fact]
    public void Whatever_comes_up_the_limits_hold() =>
        Gen.Select(s_seasons, Gen.Int[0, 51], Gen.Int[1, 30], Gen.Int[1, 6], Gen.Int[0, 120])
            .Sample(
                (up, first, residual, uses, wait) =>
                {
                    var programme = Programme.Of(
                        s_granule with
                        {
                            UsesPerYear = uses,
                            RepeatAfterDays = wait,
                        },
                        first,
                        up,
                        residual,
                        s_usual
                    );
                    Assert.True(programme.Weeks.Length <= uses);
                    Assert.All(programme.Weeks, week => Assert.True(week >= first && up[week]));
                    Assert.All(programme.Weeks.Zip(programme.Weeks.Skip(1)), pair =>
                        Assert.True(
                            pair.Second - pair.First >= residual && 7 * (pair.Second - pair.First) >= wait - 3.5
                        )
                    );
                }
            );

    // 1.68 kg a hectare over 1.125 lb/acre (1.26 kg/ha), the middle of 0.75 to 1.5: once.
    [Fact]
    public void A_yearly_amount_limits_the_uses() =>
        Assert.Equal(1, Programme.MostUses(ShippedRules.Knowledge.Treatments["prodiamine-granule"], s_usual));

    [Fact]
    public void Without_a_limit_it_goes_on_four_times_at_most() =>
        Assert.Equal(
            (int)s_usual[UsualIds.UnknownUses],
            Programme.MostUses(s_granule with { UsesPerYear = null, YearlyLimitKgAiHa = null }, s_usual)
        );
}
