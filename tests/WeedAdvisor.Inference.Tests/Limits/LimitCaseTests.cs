using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Limits;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Labels;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Limits;

/// <summary>Cases of limits that a grower meets.</summary>
public sealed class LimitCaseTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly DateOnly s_day = new(2026, 9, 15);

    // PNW handbook on field nurseries: 2 lb ai/acre a year of oxyfluorfen as spray. A granule use alone brings as much.
    [Fact]
    public void An_amount_of_one_form_counts_that_form_and_uses_count_all_forms()
    {
        PastApplication granule = Use("oxyfluorfen-oryzalin-granule", 200),
            spray = Use("oxyfluorfen-directed-spray", 120);
        Assert.DoesNotContain(Of("oxyfluorfen-directed-spray", granule), limit => limit.Kind == LimitKind.Amount);
        Assert.Contains(Of("oxyfluorfen-directed-spray", spray), limit =>
            limit is { Kind: LimitKind.Amount, Holds: Truth.NotKnown }
        );
        Assert.Contains(
            Of(
                "oxyfluorfen-directed-spray",
                granule,
                granule with
                {
                    Date = s_day.AddDays(-160),
                },
                granule with
                {
                    Date = s_day.AddDays(-130),
                }
            ),
            limit => limit is { Kind: LimitKind.Uses, Holds: Truth.Yes }
        );
    }

    // No yearly limit of pendimethalin was found; the highest published use is 4 lb ai/acre.
    [Fact]
    public void Where_no_limit_is_known_one_full_use_counts_over_all_products_and_then_the_label_is_asked()
    {
        LimitVerdict asked = Assert.Single(
            Of("oxyfluorfen-pendimethalin-granule", Use("pendimethalin-granule", 200)),
            limit => limit.Active == "pendimethalin"
        );
        Assert.Equal(Truth.NotKnown, asked.Holds);
        Assert.Contains(Need.Record("oxyfluorfen-pendimethalin-granule", "uses-per-year"), asked.Needs);
        Assert.DoesNotContain(Of("pendimethalin-granule", Use("oxyfluorfen-pendimethalin-granule", 200)), limit =>
            limit.Active == "pendimethalin"
        );
    }

    [Fact]
    public void The_growers_own_label_settles_a_limit_that_nobody_found()
    {
        KnowledgeBase read = Over("diquat-floor-spray", "uses-per-year: 4", "repeat-after-days: 14");
        Assert.NotEmpty(Of("diquat-floor-spray", Use("diquat-floor-spray", 60)));
        Assert.Empty(
            LimitCheck.Of(read.Treatments["diquat-floor-spray"], s_day, [Use("diquat-floor-spray", 60)], read)
        );
    }

    [Fact]
    public void What_is_used_as_needed_still_keeps_the_limits_of_its_own_label()
    {
        KnowledgeBase read = Over("acetic-acid-spray", "repeat-after-days: 14");
        LimitVerdict limit = Assert.Single(
            LimitCheck.Of(read.Treatments["acetic-acid-spray"], s_day, [Use("acetic-acid-spray", 10)], read)
        );
        Assert.Equal((Truth.Yes, s_day.AddDays(4)), (limit.Holds, limit.Until));
        Assert.Empty(Of("acetic-acid-spray", Use("acetic-acid-spray", 10)));
    }

    [Theory]
    [InlineData("group 14")]
    [InlineData("weed killer")]
    public void A_product_told_by_group_or_kind_alone_may_hold_any_active(string told)
    {
        var use = new PastApplication(null, s_day.AddDays(-30), "clean", WordSet.Empty)
        {
            Groups = told == "group 14" ? WordSet.Of(["14"]) : WordSet.Empty,
            Kind = told == "group 14" ? null : "weed-killer",
        };
        foreach (string product in (string[])["prodiamine-spray", "simazine-spray", "isoxaben-spray"])
            Assert.Contains(Of(product, use), limit =>
                limit.Holds == Truth.NotKnown && limit.Needs.Contains(Need.Question("past"))
            );
        Assert.Empty(Of("prodiamine-spray", use with { Groups = WordSet.Empty, Kind = "other-pesticide" }));
    }

    // A product and an active may be told with no rate that can be turned into active; all uses of it are then open.
    [Fact]
    public void A_product_told_by_its_active_brought_an_amount_that_is_not_known() =>
        Assert.Contains(
            Of(
                "oxadiazon-granule",
                new PastApplication(null, s_day.AddDays(-300), "clean", WordSet.Empty)
                {
                    Actives = WordSet.Of(["oxadiazon"]),
                }
            ),
            limit => limit is { Kind: LimitKind.Amount, Holds: Truth.NotKnown }
        );

    [Fact]
    public void What_only_the_highest_rate_makes_too_much_is_allowed_at_the_low_one_and_says_so()
    {
        PastApplication low = Use("prodiamine-granule", 150) with { Rate = 150, RateUnit = "lb/acre" };
        LimitVerdict limit = Assert.Single(
            LimitCheck.All(s_knowledge.Treatments["prodiamine-spray"], s_day, [low], s_knowledge),
            one => one.Kind == LimitKind.Amount
        );
        Assert.Equal((Truth.No, true), (limit.Holds, limit.IsTight));
        Assert.Equal(
            "0.839 kg/ha (0.749 lb/acre) of prodiamine is left of the 1.68 kg/ha that may go on in twelve months: keep "
                + "to the low end of the rate",
            limit.Text
        );
        Assert.Equal(
            Truth.Yes,
            Assert
                .Single(
                    LimitCheck.All(s_knowledge.Treatments["prodiamine-spray"], s_day, [low], s_knowledge, 1.2m),
                    one => one.Kind == LimitKind.Amount
                )
                .Holds
        );
    }

    // EC and SC of oxyfluorfen: a pint brings 0.25 or 0.5 lb. 4 pints of EC leave room for a pint more, of SC none.
    [Fact]
    public void A_rate_that_may_mean_two_strengths_waits_only_where_they_differ()
    {
        PastApplication pints = Use("oxyfluorfen-directed-spray", 200) with { Rate = 4, RateUnit = "pt/acre" };
        Assert.Contains(Of("oxyfluorfen-directed-spray", pints), limit =>
            limit is { Kind: LimitKind.Amount, Holds: Truth.NotKnown }
        );
        Assert.DoesNotContain(Of("oxyfluorfen-directed-spray", pints with { Rate = 2 }), limit =>
            limit.Kind == LimitKind.Amount
        );
    }

    [Fact]
    public void A_use_of_a_leap_day_counts_until_its_year_is_over()
    {
        var leap = new PastApplication("simazine-spray", new DateOnly(2028, 2, 29), "clean", WordSet.Empty);
        Assert.Equal(
            new DateOnly(2029, 3, 1),
            LimitCheck
                .Of(s_knowledge.Treatments["simazine-spray"], new DateOnly(2029, 2, 28), [leap], s_knowledge)
                .Max(limit => limit.Until)
        );
    }

    [Fact]
    public void The_last_days_of_the_calendar_break_nothing() =>
        Assert.NotEmpty(
            LimitCheck.Of(
                s_knowledge.Treatments["isoxaben-spray"],
                DateOnly.MaxValue.AddDays(-1),
                [new PastApplication("isoxaben-spray", DateOnly.MaxValue.AddDays(-3), "clean", WordSet.Empty)],
                s_knowledge
            )
        );

    // The same figure of a product and of its active is one limit.
    [Fact]
    public void Nothing_is_said_twice() =>
        Assert.Single(Of("prodiamine-granule", Use("prodiamine-granule", 200), Use("prodiamine-granule", 100)), limit =>
            limit.Kind == LimitKind.Amount
        );

    [Fact]
    public void With_the_past_unanswered_nothing_that_is_limited_is_clear()
    {
        AreaAdvice advice = ShippedRules.On(AreaCase.Alone(s_day, Yard() with { Past = null }));
        LimitTable table = LimitTable.Of(s_knowledge);
        foreach (ClearAction clear in advice.Clear)
        {
            if (s_knowledge.Treatments.TryGetValue(clear.Action, out Treatment? treatment))
                Assert.False(table.IsLimited(treatment), clear.Action);
        }
    }

    // Every figure that a record publishes alone fits the limit of its actives: else one of the two is wrong.
    [Fact]
    public void The_lowest_published_rate_of_every_treatment_fits_its_limits() =>
        Assert.All(s_knowledge.Treatments.Values, treatment =>
            Assert.DoesNotContain(LimitCheck.All(treatment, s_day, [], s_knowledge), limit => limit.Holds != Truth.No)
        );

    private static VisitArea Yard() => ShippedRules.Visit("limits-over-all-products").Areas[0];

    private static KnowledgeBase Over(string treatment, params string[] fields)
    {
        string text =
            $"- id: own\n  name: Own\n  treatment: {treatment}\n  read: 2026-03-01\n"
            + string.Concat(fields.Select(field => $"  {field}\n"));
        return LabelOverlay.Of(
            s_knowledge,
            LabelFile.Parse(text, "labels.yaml", s_knowledge, new DateOnly(2027, 6, 1)).Value!
        );
    }

    private static ImmutableArray<LimitVerdict> Of(string treatment, params PastApplication[] past) =>
        LimitCheck.Of(s_knowledge.Treatments[treatment], s_day, [.. past], s_knowledge);

    private static PastApplication Use(string treatment, int daysAgo) =>
        new(treatment, s_day.AddDays(-daysAgo), "clean", WordSet.Empty);
}
