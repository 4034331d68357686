using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Limits;

/// <summary>Active ingredient that a use brings, kilograms per hectare.</summary>
/// <param name="Least">The least that it may be.</param>
/// <param name="Most">The most that it may be; null when that cannot be told.</param>
public readonly record struct ActiveAmount(decimal Least, decimal? Most)
{
    /// <summary>Nothing is known of it.</summary>
    public static ActiveAmount NotKnown => new(0, null);
}

/// <summary>
/// How much active ingredient a use brings by the rates of its record: one active's share, or all together.
/// </summary>
public static class ActiveAmounts
{
    /// <summary>1 lb/acre = 0.45359237 kg / 0.40468564224 ha (NIST Handbook 44, Appendix C).</summary>
    public const decimal KgPerHaInLbPerAcre = 0.45359237m / 0.40468564224m;

    /// <summary>
    /// The part of a treatment's active ingredient that is one active: its share of the premix, and all of it when the
    /// shares are not given, so that it is never counted too low.
    /// </summary>
    public static decimal Share(Treatment treatment, string active)
    {
        decimal? sum = treatment.Actives.Aggregate((decimal?)0, (total, one) => total + one.Percent);
        return treatment.Actives.Length > 1 && sum > 0
            ? treatment.Actives.Single(one => one.Name == active).Percent!.Value / sum.Value
            : 1;
    }

    /// <summary>
    /// All actives together, from the lowest published rate to the highest; null when none is published.
    /// </summary>
    public static ActiveAmount? Published(Treatment treatment)
    {
        Span[] rates = [.. treatment.Rates.Select(rate => rate.AiLbPerAcre).OfType<Span>()];
        return rates.Length == 0
            ? null
            : new ActiveAmount(
                rates.Min(rate => rate.Low) * KgPerHaInLbPerAcre,
                rates.Max(rate => rate.High) * KgPerHaInLbPerAcre
            );
    }

    /// <summary>
    /// One active of a treatment, from the lowest published rate to the highest; null when none is published.
    /// </summary>
    public static ActiveAmount? Published(Treatment treatment, string active) =>
        Published(treatment) is { } all ? Part(all, Share(treatment, active)) : null;

    /// <summary>
    /// All actives that an earlier use brought: by the rate told with it, or from the lowest published rate to the
    /// highest.
    /// </summary>
    public static ActiveAmount Brought(Treatment treatment, PastApplication use) =>
        Told(treatment, use) ?? Published(treatment) ?? ActiveAmount.NotKnown;

    /// <summary>The same of one active.</summary>
    public static ActiveAmount Brought(Treatment treatment, PastApplication use, string active) =>
        Part(Brought(treatment, use), Share(treatment, active));

    // The published pairs of product and active in the unit told say how strong the product is, or between what it may
    // lie.
    private static ActiveAmount? Told(Treatment treatment, PastApplication use)
    {
        if (use.Rate is not { } product)
            return null;
        decimal[] strengths =
        [
            .. treatment
                .Rates.Where(rate => rate.Unit == use.RateUnit)
                .SelectMany(rate =>
                    rate is { Product: { } sold, AiLbPerAcre: { } held }
                        ? new[] { (held.Low, sold.Low), (held.High, sold.High) }
                        : []
                )
                .Where(pair => pair.Item2 > 0)
                .Select(pair => pair.Item1 / pair.Item2),
        ];
        return strengths.Length == 0
            ? null
            : new ActiveAmount(
                product * strengths.Min() * KgPerHaInLbPerAcre,
                product * strengths.Max() * KgPerHaInLbPerAcre
            );
    }

    private static ActiveAmount Part(ActiveAmount all, decimal share) => new(all.Least * share, all.Most * share);
}
