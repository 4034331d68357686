using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Limits;

/// <summary>
/// How much of an active one use brings, at the highest published rate, so that a yearly limit is never underrated.
/// 1 lb/acre = 0.45359237 kg / 0.40468564224 ha (NIST Handbook 44, Appendix C).
/// </summary>
public static class ActiveDoses
{
    /// <summary>
    /// Limits are kept in kilograms to two places, and were published in pounds: 0.75 lb/acre is 0.8406 kg/ha and stands as
    /// 0.84. Half of the last place is allowed on top, or two uses of 0.375 lb would break a limit that they keep.
    /// </summary>
    public const decimal RoundingKgPerHa = 0.005m;

    private const decimal KgPerHaInLbPerAcre = 0.45359237m / 0.40468564224m;

    /// <summary>All actives together, kilograms per hectare at the highest published rate; null when no rate is published.</summary>
    public static decimal? TotalKgPerHa(Treatment treatment) => Highest(treatment);

    /// <summary>
    /// One active at the highest published rate: its share of a premix; all of it where no shares are given, which overrates it.
    /// </summary>
    public static decimal? KgPerHa(Treatment treatment, Active active) => Highest(treatment) * Share(treatment, active.Name);

    /// <summary>One active at the lowest published rate; null when no rate is published.</summary>
    public static decimal? LeastKgPerHa(Treatment treatment, string active) =>
        treatment.Rates.Min(rate => rate.AiLbPerAcre?.Low) * KgPerHaInLbPerAcre * LeastShare(treatment, active);

    /// <summary>
    /// What an earlier use brought of an active, kilograms per hectare: by its own rate where that is told in the unit of a
    /// published one, else from the lowest to the highest published rate. Null ends are not known.
    /// </summary>
    public static (decimal? Least, decimal? Most) Of(PastApplication use, Treatment record, string active)
    {
        decimal? most = Highest(record) * Share(record, active);
        if (use.Rate is not { } rate)
            return (LeastKgPerHa(record, active), most);
        decimal? told = record.Rates
            .Where(published => published.Unit == use.RateUnit && published.Product is { High: > 0 } && published.AiLbPerAcre is not null)
            .Select(published => rate * published.AiLbPerAcre!.Value.High / published.Product!.Value.High * KgPerHaInLbPerAcre)
            .Max(kgPerHa => (decimal?)kgPerHa);
        return told is { } kg
            ? (kg * LeastShare(record, active), kg * Share(record, active))
            : (LeastKgPerHa(record, active), most);
    }

    private static decimal? Highest(Treatment treatment) => treatment.Rates.Max(rate => rate.AiLbPerAcre?.High) * KgPerHaInLbPerAcre;

    private static decimal Share(Treatment treatment, string active) => ShareOrNull(treatment, active) ?? 1;

    private static decimal LeastShare(Treatment treatment, string active) =>
        ShareOrNull(treatment, active) ?? (treatment.Actives.Length == 1 ? 1 : 0);

    private static decimal? ShareOrNull(Treatment treatment, string active)
    {
        decimal? shares = treatment.Actives.Sum(one => one.Percent);
        decimal? own = treatment.Actives.FirstOrDefault(one => one.Name == active)?.Percent;
        return own is { } percent && shares is > 0 ? percent / shares : null;
    }
}
