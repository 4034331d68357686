using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Tests.Money;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.OneYear;

/// <summary>What seedlings cost by week, held against the price of whole years.</summary>
public sealed class YearEscapesTests
{
    private static readonly ImmutableArray<Treatment> s_preventives =
    [
        .. ShippedRules.Knowledge.Treatments.Values.Where(treatment =>
            treatment is { Role: "preemergence", ResidualWeeks: not null, Cost: not null }
        ),
    ];

    private static readonly ImmutableArray<Practice> s_covers =
    [
        .. ShippedRules.Knowledge.Practices.Values.Where(practice => practice is { Kind: "covering", Cost: not null }),
    ];

    private static readonly YearCase s_year = Yards.Case(Yards.Area("container-yard")).Value!.Year;

    private static readonly ImmutableArray<int?> s_intervals = [null, 1, 2, 3, 4, 6, 8, 13, 26];

    private static Gen<int?> Interval => Gen.Int[0, s_intervals.Length - 1].Select(i => s_intervals[i]);

    private static Gen<YearCase> Years =>
        from pots in Gen.Int[100, 50_000]
        from wage in Gen.Int[0, 40]
        from width in Gen.Int[8, 60]
        select s_year with
        {
            Wage = new Told<decimal>(wage, Origin.Set),
            Block = s_year.Block with { Pots = new Told<int>(pots, Origin.Set) },
            Numbers = s_year.UsualSize.For(
                s_year.Block with
                {
                    WidthCm = new Told<decimal>(width, Origin.Set),
                    ApartCm = new Told<decimal>(width * 2, Origin.Set),
                },
                s_year.Usual
            ),
        };

    private static Gen<WayPlan> Standing =>
        from spring in Interval
        from summer in Interval
        from cool in Interval
        from cover in Gen.Int[-1, s_covers.Length - 1]
        from follows in Gen.Bool
        from spread in Gen.Int[-3, 6]
        select new WayPlan(
            "drawn",
            "Drawn",
            4,
            cover < 0 ? [] : [new WayPart(s_covers[cover], []) { FollowsFirstRound = follows }]
        )
        {
            Rounds = new YearRounds(spring, summer, cool),
            SpreadWeeks = Math.Max(1, spread),
        };

    private static Gen<ImmutableArray<WayPart>> Uses =>
        Gen.Select(Gen.Int[0, s_preventives.Length - 1], Gen.Int[0, 51])
            .Array[0, 6]
            .Select(drawn =>
                drawn
                    .DistinctBy(use => use.Item1)
                    .Select(use => new WayPart(s_preventives[use.Item1], [use.Item2]))
                    .ToImmutableArray()
            );

    [Fact]
    public void Where_nothing_stands_at_first_what_is_left_is_the_price_of_all_but_the_weeds() =>
        Gen.Select(Years, Standing, Uses)
            .Sample(
                (year, standing, uses) =>
                {
                    YearCase clean = Clean(year);
                    Way way = Reckoned(clean, standing with { Parts = [.. standing.Parts, .. uses] });
                    var escapes = YearEscapes.At(clean, way);
                    Assert.Equal((double)OfMeasures(way), escapes.RestUsd, 1e-6 * Math.Max(1, (double)way.Usd));
                },
                iter: Sizes.Of(few: 40, many: 5_000)
            );

    [Fact]
    public void No_year_costs_less_than_the_floor_under_its_standing_measures() =>
        Gen.Select(Years, Standing, Uses, Gen.Double[0, 1], Gen.Double[1, 3])
            .Sample(
                (year, standing, uses, more, slack) =>
                {
                    Way way = Reckoned(year, standing with { Parts = [.. standing.Parts, .. uses] });
                    double[][] held =
                    [
                        .. year.Weeds.Counted.Select(weed => WayControl.Held(year, way.Plan, weed, Variation.None)),
                    ];
                    double[][] most = [.. held.Select(row => row.Select(one => one + ((1 - one) * more)).ToArray())];
                    Way bare = Reckoned(year, standing);
                    var least = YearEscapes.Least(year, bare, most, (double)way.Usd * slack);
                    double floor =
                        least.RestUsd
                        + least
                            .Usd.Select((row, weed) => row.Select((usd, week) => usd * (1 - held[weed][week])).Sum())
                            .Sum()
                        + (double)(OfMeasures(way) - OfMeasures(bare));
                    Assert.True(
                        floor <= (double)way.Usd + (1e-6 * Math.Max(1, (double)way.Usd)),
                        $"floor {floor} above {way.Usd} of {way.Plan.Name}"
                    );
                },
                iter: Sizes.Of(few: 40, many: 20_000)
            );

    // The parts of the pots are priced by themselves, each with its first round in its week.
    [Fact]
    public void A_first_round_spread_over_weeks_costs_the_mean_of_its_parts_and_all_its_hours_fall_in_weeks() =>
        Gen.Select(Years, Standing, Uses, Gen.Int[2, 8])
            .Sample(
                (year, standing, uses, weeks) =>
                {
                    WayPlan plan = standing with { Parts = [.. standing.Parts, .. uses], SpreadWeeks = weeks };
                    Way whole = Reckoned(year, plan);
                    Way[] parts =
                    [
                        .. Enumerable
                            .Range(0, weeks)
                            .Select(week => Reckoned(year, plan with { SpreadWeeks = 1, FirstRoundWeek = week })),
                    ];
                    Assert.Equal(parts.Sum(part => part.Usd) / weeks, whole.Usd, 6);
                    Assert.Equal(whole.Hours, whole.HoursByWeek().Sum(), 4);
                    if (parts[0].Season.Rounds is not [{ Week: 0 }, ..])
                        return;
                    for (int week = 0; week < weeks; week++)
                        Assert.Equal(week, parts[week].Season.Rounds[0].Week);
                    Assert.True(whole.Season.Rounds[0].WalkingHours * weeks <= parts[0].Season.Rounds[0].Hours + 1e-9);
                },
                iter: Sizes.Of(few: 20, many: 2_000)
            );

    private static YearCase Clean(YearCase year) =>
        year with
        {
            Weeds = year.Weeds with { Counted = [.. year.Weeds.Counted.Select(weed => weed with { Standing = [] })] },
        };

    private static decimal OfMeasures(Way way) =>
        way.Items.Where(item => item.Id is not ("pulling" or "lost-plants" or "next-year")).Sum(item => item.Usd);

    private static Way Reckoned(YearCase year, WayPlan plan)
    {
        var way = WayCosting.Of(year, plan);
        Assert.Empty(way.Refusals);
        return way.Value!;
    }
}
