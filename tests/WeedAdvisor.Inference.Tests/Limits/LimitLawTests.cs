using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Limits;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Limits;

/// <summary>
/// Limits belong to the active, over all products. Held against sums done here, day by day, from the figures of
/// rules/limits.yaml (NC State factsheets on prodiamine, isoxaben and oryzalin; Neal 2005 on oxyfluorfen).
/// </summary>
public sealed class LimitLawTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly DateOnly s_day = new(2026, 9, 15);

    private static readonly string[] s_products =
    [
        "prodiamine-granule",
        "prodiamine-spray",
        "oxyfluorfen-prodiamine-granule",
        "isoxaben-prodiamine-granule",
        "isoxaben-spray",
        "isoxaben-dithiopyr-granule",
        "oxyfluorfen-oryzalin-granule",
        "oxyfluorfen-pendimethalin-granule",
        "oxyfluorfen-directed-spray",
        "flumioxazin-granule",
        "oryzalin-spray",
        "simazine-spray",
    ];

    private static readonly Gen<PastApplication> s_use = Gen.Select(
        Gen.Int[0, s_products.Length - 1],
        Gen.Int[0, 500],
        (product, ago) => Use(s_products[product], s_day.AddDays(-ago))
    );

    [Fact]
    public void After_two_granule_uses_of_prodiamine_its_spray_is_out_until_the_oldest_has_lapsed()
    {
        PastApplication[] past =
        [
            Full("prodiamine-granule", s_day.AddDays(-200)),
            Use("prodiamine-granule", s_day.AddDays(-100)),
        ];
        LimitVerdict limit = Assert.Single(Of("prodiamine-spray", past), one =>
            one is { Kind: LimitKind.Amount, Holds: Truth.Yes, Active: "prodiamine" }
        );
        Assert.Equal(s_day.AddDays(-200).AddYears(1), limit.Until);
    }

    [Fact]
    public void A_fourth_oxyfluorfen_product_of_a_year_is_out() =>
        Assert.Contains(
            Of(
                "oxyfluorfen-prodiamine-granule",
                Use("oxyfluorfen-oryzalin-granule", s_day.AddDays(-300)),
                Use("oxyfluorfen-oryzalin-granule", s_day.AddDays(-200)),
                Use("oxyfluorfen-pendimethalin-granule", s_day.AddDays(-90))
            ),
            limit =>
                limit is { Kind: LimitKind.Uses, Active: "oxyfluorfen", Holds: Truth.Yes }
                && limit.Until == s_day.AddDays(-300).AddYears(1)
        );

    [Fact]
    public void A_rate_in_a_unit_for_which_no_active_is_published_counts_as_the_published_range()
    {
        var silent = s_knowledge
            .Treatments.Values.SelectMany(record =>
                record
                    .Rates.Where(rate => rate.Product is not null)
                    .GroupBy(rate => rate.Unit)
                    .Where(unit => unit.All(rate => rate.AiLbPerAcre is null))
                    .Select(unit => (Record: record, unit.First().Product!.Value.High, Unit: unit.Key!))
            )
            .ToArray();
        Assert.NotEmpty(silent);
        foreach ((Treatment record, decimal rate, string unit) in silent)
        {
            PastApplication use = Use(record.Id, s_day);
            string active = record.Actives[0].Name;
            Assert.Equal(
                ActiveAmounts.Brought(record, use, active),
                ActiveAmounts.Brought(record, use with { Rate = rate, RateUnit = unit }, active)
            );
        }
    }

    [Fact]
    public void An_interval_counts_over_all_products_of_the_active() =>
        Assert.Contains(Of("isoxaben-dithiopyr-granule", Use("isoxaben-spray", s_day.AddDays(-6))), limit =>
            limit is { Kind: LimitKind.Interval, Holds: Truth.Yes } && limit.Until == s_day.AddDays(54)
        );

    [Fact]
    public void A_pair_put_on_together_is_one_use_of_what_both_hold() =>
        Assert.DoesNotContain(
            Of(
                "oxyfluorfen-prodiamine-granule",
                Use("oxyfluorfen-oryzalin-granule", s_day.AddDays(-300)),
                Use("oxyfluorfen-pendimethalin-granule", s_day.AddDays(-300)),
                Use("oxyfluorfen-oryzalin-granule", s_day.AddDays(-200))
            ),
            limit => limit is { Kind: LimitKind.Uses, Active: "oxyfluorfen" }
        );

    [Fact]
    public void What_only_an_unknown_rate_makes_too_much_waits_for_that_rate()
    {
        PastApplication silent = Use("prodiamine-granule", s_day.AddDays(-100));
        LimitVerdict limit = Assert.Single(
            Of("prodiamine-granule", silent, silent with { Date = s_day.AddDays(-60) }),
            one => one.Kind == LimitKind.Amount && one.Active is not null
        );
        Assert.Equal(Truth.Yes, limit.Holds);
        limit = Assert.Single(Of("prodiamine-granule", silent), one =>
            one.Kind == LimitKind.Amount && one.Active is not null
        );
        Assert.Equal((Truth.NotKnown, Need.Question("past")), (limit.Holds, limit.Needs.Single()));
        Assert.DoesNotContain(Of("prodiamine-granule", silent with { Rate = 150, RateUnit = "lb/acre" }), one =>
            one.Kind == LimitKind.Amount
        );
    }

    [Fact]
    public void A_product_told_by_its_active_counts_as_a_use_of_it() =>
        Assert.Contains(
            Of(
                "simazine-spray",
                new PastApplication(null, s_day.AddDays(-30), "clean", WordSet.Empty)
                {
                    Actives = WordSet.Of(["simazine"]),
                }
            ),
            limit => limit is { Kind: LimitKind.Uses, Holds: Truth.Yes }
        );

    [Fact]
    public void With_the_past_unanswered_everything_limited_waits_and_what_is_unlimited_does_not()
    {
        Assert.Equal(
            [Need.Question("past")],
            Assert.Single(LimitCheck.Of(s_knowledge.Treatments["prodiamine-spray"], s_day, null, s_knowledge)).Needs
        );
        Assert.Empty(LimitCheck.Of(s_knowledge.Treatments["acetic-acid-spray"], s_day, null, s_knowledge));
    }

    // The sums once more: a use counts for a year from its day; a pair on one day is one; 0.75 lb/acre is 0.8406 kg/ha.
    [Fact]
    public void Uses_and_intervals_agree_with_a_count_by_hand() =>
        Gen.Select(s_use.Array[0, 6], Gen.Int[0, s_products.Length - 1])
            .Sample(
                (past, product) =>
                {
                    Treatment treatment = s_knowledge.Treatments[s_products[product]];
                    ImmutableArray<LimitVerdict> told = Of(treatment.Id, past);
                    foreach (string active in treatment.Actives.Select(one => one.Name))
                    {
                        DateOnly[] days =
                        [
                            .. past.Where(use => Holds(use.Treatment!, active))
                                .Select(use => use.Date!.Value)
                                .Distinct()
                                .Order(),
                        ];
                        int inYear = days.Count(day => day.AddYears(1) > s_day);
                        int? most = active switch
                        {
                            "oxyfluorfen" => 3,
                            "flumioxazin" => 2,
                            "simazine" => 1,
                            _ => null,
                        };
                        bool tooMany = inYear + 1 > most;
                        Assert.Equal(
                            tooMany,
                            told.Any(one => one is { Kind: LimitKind.Uses, Holds: Truth.Yes } && one.Active == active)
                        );
                        if (tooMany)
                        {
                            DateOnly free = Enumerable
                                .Range(0, 400)
                                .Select(s_day.AddDays)
                                .First(later => days.Count(day => day.AddYears(1) > later && day <= s_day) + 1 <= most);
                            Assert.Equal(
                                free,
                                told.First(one => one.Kind == LimitKind.Uses && one.Active == active).Until
                            );
                        }

                        int interval = active switch
                        {
                            "isoxaben" => 60,
                            "oryzalin" when treatment.Id == "oryzalin-spray" => 90,
                            _ => 0,
                        };
                        if (interval > 0)
                        {
                            // The interval that is told is the one that ends last, which may be that of another active.
                            DateOnly? last = days.Length > 0 ? days[^1] : null;
                            bool tooSoon = last is { } day && s_day.DayNumber - day.DayNumber < interval;
                            Assert.True(
                                !tooSoon
                                    || told.Any(one =>
                                        one is { Kind: LimitKind.Interval, Holds: Truth.Yes }
                                        && one.Until >= last!.Value.AddDays(interval)
                                    )
                            );
                        }
                    }
                },
                iter: Sizes.Of(300, 20_000)
            );

    [Fact]
    public void One_use_more_never_takes_a_limit_or_a_date_away() =>
        Gen.Select(s_use.Array[0, 5], s_use, Gen.Int[0, s_products.Length - 1])
            .Sample(
                (past, more, product) =>
                {
                    ImmutableArray<LimitVerdict> before = Of(s_products[product], past),
                        after = Of(s_products[product], [.. past, more]);
                    DateOnly? was = Latest(before),
                        now = Latest(after);
                    Assert.True(was is null || now >= was);
                    Assert.True(!before.Any(one => one.Holds == Truth.NotKnown) || !after.IsEmpty);
                },
                iter: Sizes.Of(300, 20_000)
            );

    private static DateOnly? Latest(ImmutableArray<LimitVerdict> limits) =>
        limits.Where(one => one.Holds == Truth.Yes).Select(one => one.Until).Max();

    private static bool Holds(string treatment, string active) =>
        s_knowledge.Treatments[treatment].Actives.Any(one => one.Name == active);

    private static ImmutableArray<LimitVerdict> Of(string treatment, params PastApplication[] past) =>
        LimitCheck.Of(s_knowledge.Treatments[treatment], s_day, [.. past], s_knowledge);

    private static PastApplication Use(string treatment, DateOnly day) => new(treatment, day, "clean", WordSet.Empty);

    private static PastApplication Full(string treatment, DateOnly day) =>
        Use(treatment, day) with
        {
            Rate = 300,
            RateUnit = "lb/acre",
        };
}
