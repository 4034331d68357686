using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Limits;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Limits;

/// <summary>
/// Limits against a count that shares no code with them, and what one use more may never do to the advice.
/// </summary>
public sealed class LimitOracleTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly string[] s_products = [.. LimitsByHand.Products.Keys];

    // Around a leap day too.
    private static readonly Gen<DateOnly> s_day = Gen.Int[0, 900]
        .Select(days => new DateOnly(2028, 1, 10).AddDays(days));

    private static readonly Gen<(DateOnly Day, PastApplication[] Past, string Product)> s_cases = Gen.Select(
        s_day,
        Gen.Select(Gen.Int[0, s_products.Length - 1], Gen.Int[-1, 430], Gen.Int[150, 300], Gen.Bool).Array[0, 6],
        Gen.Int[0, s_products.Length - 1],
        (day, uses, product) =>
            (
                day,
                uses.Select(use =>
                        UseOf(
                            s_products[use.Item1],
                            use.Item2 < 0 ? null : day.AddDays(-use.Item2),
                            use.Item4 ? use.Item3 : null
                        )
                    )
                    .ToArray(),
                s_products[product]
            )
    );

    [Fact]
    public void Uses_amounts_and_intervals_agree_with_a_count_by_hand_day_by_day() =>
        s_cases.Sample(
            one =>
            {
                ImmutableArray<LimitVerdict> told = Of(one.Product, one.Day, one.Past);
                Truth expected = LimitsByHand.Breaks(one.Product, one.Past, one.Day);
                Assert.Equal(expected, told.Select(limit => limit.Holds).Append(Truth.No).Max());
                if (expected == Truth.Yes)
                {
                    Assert.Equal(
                        LimitsByHand.FirstDay(one.Product, one.Past, one.Day),
                        told.Where(limit => limit.Holds == Truth.Yes).Max(limit => limit.Until)
                    );
                }
            },
            iter: Sizes.Of(300, 50_000),
            print: one =>
                $"{one.Product} on {one.Day:O} after "
                + $"{string.Join("; ", one.Past.Select(use => $"{use.Treatment} {use.Date:O} {use.Rate}"))}"
        );

    // Through the rules: what is out, or waits, stays so after one use more, and no day comes earlier.
    [Fact]
    public void One_use_more_clears_no_other_product_of_the_same_active_and_brings_no_day_forward()
    {
        LiveAdvice live = ShippedRules.Advisor.Open(AreaCase.Alone(new DateOnly(2028, 6, 1), Yard([])));
        Gen.Select(s_cases, Gen.Int[0, s_products.Length - 1], Gen.Int[0, 430], (one, more, ago) => (one, more, ago))
            .Sample(
                sample =>
                {
                    (DateOnly day, PastApplication[] past, _) = sample.one;
                    PastApplication added = UseOf(s_products[sample.more], day.AddDays(-sample.ago), null);
                    AreaAdvice before = live.Change(AreaCase.Alone(day, Yard(past)));
                    AreaAdvice after = live.Change(AreaCase.Alone(day, Yard([.. past, added])));
                    foreach (
                        string other in s_products.Where(id =>
                            id != added.Treatment && SharesActive(id, added.Treatment!)
                        )
                    )
                    {
                        if (!IsClear(before, other))
                            Assert.False(IsClear(after, other), other);
                        if (UntilOf(before, other) is { } was && UntilOf(after, other) is { } now)
                            Assert.True(now >= was, $"{other}: {was:O}, then {now:O}");
                        Assert.False(
                            before.Barred.Any(bar => bar.Action == other)
                                && after.Waiting.Any(wait => wait.Action == other),
                            other
                        );
                    }
                },
                iter: Sizes.Of(60, 5_000),
                threads: 1
            );
    }

    private static bool SharesActive(string one, string other) =>
        LimitsByHand.Products[one].Actives.Any(active => LimitsByHand.Products[other].Holds(active.Name));

    private static bool IsClear(AreaAdvice advice, string action) => advice.Clear.Any(clear => clear.Action == action);

    private static DateTime? UntilOf(AreaAdvice advice, string action) =>
        advice.Barred.FirstOrDefault(bar => bar.Action == action)?.Until?.From;

    private static VisitArea Yard(PastApplication[] past)
    {
        Visit worked = ShippedRules.Visit("limits-over-all-products");
        return worked.Areas[0] with { Past = [.. past] };
    }

    private static ImmutableArray<LimitVerdict> Of(string treatment, DateOnly day, PastApplication[] past) =>
        LimitCheck.Of(s_knowledge.Treatments[treatment], day, [.. past], s_knowledge);

    private static PastApplication UseOf(string treatment, DateOnly? day, int? pounds) =>
        new PastApplication(treatment, day, "clean", WordSet.Empty) is var use
        && pounds is { } rate
        && treatment == "prodiamine-granule"
            ? use with
            {
                Rate = rate,
                RateUnit = "lb/acre",
            }
            : new PastApplication(treatment, day, "clean", WordSet.Empty);
}
