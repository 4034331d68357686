using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Inference.Limits;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Season.Programme.Trade;

/// <summary>Plans held against published programmes. The source stands beside each check.</summary>
public sealed class PublishedProgrammesTests
{
    // Pounds per acre to kilograms per hectare: NIST Handbook 44, Appendix C.
    private const decimal KgHaInLbAcre = 0.45359237m / 0.40468564224m;

    /// <summary>
    /// Neal 2005 and Lin and Neal 2020: container nurseries treat three to six times a year. The visits are held at
    /// rounds of four weeks or as they are if rarer: who weeds more often needs fewer uses.
    /// </summary>
    [Theory]
    [InlineData("demo-spring", "container-yard")]
    [InlineData("willowherb-in-fluff", "yard")]
    [InlineData("hollies-and-boxwood-in-march", "block")]
    [InlineData("magnolias-newly-potted-in-april", "yard")]
    [InlineData("container-yard-with-spurge", "yard")]
    public void An_open_yard_with_its_usual_weeds_is_treated_three_to_six_times(string visit, string area) =>
        Assert.InRange(Years.Best(Case(visit, area, leastRounds: 4)).Applications.Length, 3, 6);

    /// <summary>
    /// Altland 2019: repeat often every eight to ten weeks. A plan goes out after six where two products take turns and
    /// the second takes what the first misses; the same active comes again after eight weeks or more.
    /// </summary>
    [Fact]
    public void While_weeds_press_the_same_active_returns_after_eight_weeks_or_more_and_something_after_twelve_at_most()
    {
        SeasonCase season = Years.DemoCase;
        SeasonApplication[] uses =
        [
            .. Years.Best(season).Applications.Where(one => season.Year.DayOf(one.Week) < new DateOnly(2026, 10, 1)),
        ];
        Assert.True(uses.Length >= 3);
        Assert.All(uses.Zip(uses.Skip(1)), pair => Assert.InRange(pair.Second.Week - pair.First.Week, 6, 12));
        Assert.All(uses.GroupBy(one => one.Name).SelectMany(same => same.Zip(same.Skip(1))), pair =>
            Assert.True(pair.Second.Week - pair.First.Week >= 8)
        );
    }

    /// <summary>
    /// Neal 2011 and the Oregon State bittercress page: two to three weeks in the open before film goes on; seven days
    /// are published for prodiamine.
    /// </summary>
    [Fact]
    public void Nothing_goes_on_in_the_two_weeks_before_film_but_what_may()
    {
        foreach (SeasonCase season in Years.All)
        {
            foreach (SeasonApplication one in Years.Best(season).Applications)
            {
                DateOnly day = season.Year.DayOf(one.Week);
                int least = one.Name.StartsWith("prodiamine", StringComparison.Ordinal) ? 7 : 14;
                Assert.True(
                    season.Through.CoveringAfter(day) is not { } film || film.DayNumber - day.DayNumber >= least,
                    $"{season.Area.Id}: {one.Name} on {day}"
                );
            }
        }
    }

    /// <summary>
    /// What a year may see of an active: prodiamine 1.5, oxadiazon 8 and S-metolachlor 4 lb ai/acre (NC State
    /// factsheets), flumioxazin 0.75 (NC State factsheet of the granule), isoxaben 4 lb of product of 75 % (NC State
    /// factsheet), simazine 4 (Colorado State), oxyfluorfen sprays 2 (PNW handbook, field-grown stock), bentazon 2 and
    /// clethodim 68 fl oz of 0.97 lb/gal (PNW handbook, landscapes), glyphosate 10.6 as salt (PNW handbook, greenhouse
    /// floors), halosulfuron 2 oz of 75 % (PNW handbook, cucurbits). From memory: dimethenamid-P 3,
    /// trifluralin 12, glufosinate 4.5; oryzalin and benfluralin 4 (400 lb of the granule a year, Colorado State; 1 %
    /// of each from memory).
    /// </summary>
    [Theory]
    [InlineData("prodiamine", 1.5, false)]
    [InlineData("oxadiazon", 8, false)]
    [InlineData("S-metolachlor", 4, false)]
    [InlineData("flumioxazin", 0.75, false)]
    [InlineData("isoxaben", 3, false)]
    [InlineData("simazine", 4, false)]
    [InlineData("oxyfluorfen", 2, false)]
    [InlineData("bentazon", 2, false)]
    [InlineData("clethodim", 68.0 / 128 * 0.97, false)]
    [InlineData("glyphosate", 10.6, false)]
    [InlineData("halosulfuron-methyl", 2.0 / 16 * 0.75, false)]
    [InlineData("dimethenamid-P", 3, true)]
    [InlineData("trifluralin", 12, true)]
    [InlineData("glufosinate-ammonium", 4.5, true)]
    [InlineData("oryzalin", 4, true)]
    [InlineData("benfluralin", 4, true)]
    public void Yearly_limits_are_the_published_ones(string active, decimal lbPerAcre, bool isFromMemory)
    {
        Knowledge.Records.ActiveLimit limit = Assert.Single(ShippedRules.Knowledge.ActiveLimits.Values, limit =>
            limit.Active == active && limit.KgAiHaPerYear is not null
        );
        Assert.Equal(Math.Round(lbPerAcre * KgHaInLbAcre, limit.KgAiHaPerYear!.Value.Scale), limit.KgAiHaPerYear);
        Assert.Equal(isFromMemory, limit.Memory.Contains("yearly-limit-kg-ai-ha"));
    }

    /// <summary>
    /// Uses: oxyfluorfen three (Neal 2005), simazine one (Colorado State), flumioxazin two (NC State), clethodim four
    /// (PNW handbook, cucurbits), iron HEDTA four (University of Maryland). Days between two: isoxaben 60, oryzalin 90
    /// (NC State), prodiamine 60 (US label of prodiamine on fertiliser), bentazon 7 (PNW handbook), iron HEDTA 28
    /// (University of Maryland), dimethenamid-P 35 (memory).
    /// </summary>
    [Fact]
    public void Uses_and_intervals_of_actives_are_the_published_ones()
    {
        Assert.Equal(
            ["clethodim 4", "flumioxazin 2", "iron HEDTA 4", "oxyfluorfen 3", "simazine 1"],
            Figures(limit => limit.UsesPerYear)
        );
        Assert.Equal(
            ["bentazon 7", "dimethenamid-P 35", "iron HEDTA 28", "isoxaben 60", "oryzalin 90", "prodiamine 60"],
            Figures(limit => limit.IntervalDays)
        );

        static string[] Figures(Func<Knowledge.Records.ActiveLimit, decimal?> figure) =>
            [
                .. ShippedRules
                    .Knowledge.ActiveLimits.Values.Where(limit => figure(limit) is not null)
                    .Select(limit => FormattableString.Invariant($"{limit.Active} {figure(limit)}"))
                    .Order(StringComparer.Ordinal),
            ];
    }

    /// <summary>
    /// NC State factsheet of flumioxazin granules: 150 lb of product (0.375 lb ai) at once, 300 lb (0.75 lb ai) a year:
    /// two uses, not one, although 0.75 lb/acre is a little more than the 0.84 kg/ha of the record.
    /// </summary>
    [Fact]
    public void Two_uses_of_flumioxazin_granules_fit_in_a_year()
    {
        SeasonCase season = Years.DemoCase.With(
            new SeasonRequest
            {
                Dropped =
                [
                    .. Years
                        .DemoCase.Treatments.Select(treatment => treatment.Id)
                        .Where(id => id != "flumioxazin-granule"),
                ],
                RunOfSite = null,
            },
            ShippedRules.Knowledge
        );
        Assert.Equal(2, Years.Best(season).Applications.Length);
    }

    /// <summary>Neal 2005: products with oxyfluorfen at most three times a year, whatever they are called.</summary>
    [Fact]
    public void Oxyfluorfen_goes_on_three_times_at_most()
    {
        Assert.Equal(3, ShippedRules.Knowledge.ActiveLimits["oxyfluorfen-uses"].UsesPerYear);
        foreach (SeasonCase season in Years.All)
            Assert.True(
                Years.Best(season).Applications.Count(one => Holds(one.Name, "oxyfluorfen")) <= 3,
                season.Area.Id
            );
    }

    /// <summary>NC State factsheet: oryzalin does not go on again within 90 days.</summary>
    [Fact]
    public void Oryzalin_waits_ninety_days()
    {
        foreach (SeasonCase season in Years.All)
        {
            int[] weeks =
            [
                .. Years.Best(season).Applications.Where(one => Holds(one.Name, "oryzalin")).Select(one => one.Week),
            ];
            foreach ((int first, int second) in weeks.Zip(weeks.Skip(1)))
                Assert.True((second - first) * 7 >= 90, season.Area.Id);
        }

        // A limit that is known lets it go on twice, and then the days between show.
        Treatment spray = ShippedRules.Knowledge.Treatments["oryzalin-spray"];
        Assert.Equal(90, LimitCheck.IntervalDays(spray, ShippedRules.Knowledge));
        var past = ImmutableArray.Create(new PastApplication("oryzalin-spray", Years.DemoDay, "clean", WordSet.Empty));
        Assert.Contains(LimitCheck.Of(spray, Years.DemoDay.AddDays(89), past, ShippedRules.Knowledge), limit =>
            limit is { Kind: LimitKind.Interval, Holds: Truth.Yes } && limit.Until == Years.DemoDay.AddDays(90)
        );
    }

    /// <summary>Clemson and NC State on flumioxazin granules: 0.75 to 1 inch of water; 1 inch is 25.4 mm.</summary>
    [Fact]
    public void Flumioxazin_granules_are_watered_in_with_three_quarters_of_an_inch_or_more()
    {
        Treatment granule = ShippedRules.Knowledge.Treatments["flumioxazin-granule"];
        Assert.InRange(granule.WaterInMm!.Value.Low, 0.75m * 25.4m - 0.1m, 25.4m);
        Assert.Contains(Years.DemoQuick.Work, work =>
            work.Kind == PlannedWorkKind.WaterIn
            && work.Action == granule.Id
            && work.Text.StartsWith("Water in with 19", StringComparison.Ordinal)
        );
    }

    /// <summary>Common practice, no source: a programme leads with another site of action after each use.</summary>
    [Fact]
    public void No_programme_uses_one_site_of_action_twice_running()
    {
        foreach (SeasonCase season in Years.All)
        {
            string[][] sites = [.. Years.Best(season).Applications.Select(one => Groups(one.Name))];
            Assert.All(sites.Zip(sites.Skip(1)), pair => Assert.Empty(pair.First.Intersect(pair.Second)));
        }
    }

    private static bool Holds(string treatment, string active) =>
        ShippedRules.Knowledge.Treatments[treatment].Actives.Any(one => one.Name == active);

    private static string[] Groups(string treatment) =>
        [.. ShippedRules.Knowledge.Treatments[treatment].Actives.Select(active => active.Group ?? active.Name)];

    private static SeasonCase Case(string visit, string area, int leastRounds = 1)
    {
        var worked = ShippedRules.Visit(visit);
        VisitArea found = worked.Areas.Single(one => one.Id == area);
        int rounds = AreaReading.Of(found, worked.Date, ShippedRules.Knowledge).Rounds(null).Value;
        return Years.Of(found, worked.Date, new SeasonRequest { RoundsWeeks = Math.Max(rounds, leastRounds) });
    }
}
