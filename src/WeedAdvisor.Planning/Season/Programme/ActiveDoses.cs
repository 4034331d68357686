using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// How much of an active one use brings, at the highest published rate, so that a yearly limit is never underrated.
/// 1 lb/acre = 0.45359237 kg / 0.40468564224 ha (NIST Handbook 44, Appendix C).
/// </summary>
internal static class ActiveDoses
{
    /// <summary>
    /// Limits are kept in kilograms to two places, and were published in pounds: 0.75 lb/acre is 0.8406 kg/ha and stands as
    /// 0.84. Half of the last place is allowed on top, or two uses of 0.375 lb would break a limit that they keep.
    /// </summary>
    public const decimal RoundingKgPerHa = 0.005m;

    private const decimal KgPerHaInLbPerAcre = 0.45359237m / 0.40468564224m;

    /// <summary>All actives together, kilograms per hectare; null when no rate is published.</summary>
    public static decimal? TotalKgPerHa(Treatment treatment)
    {
        decimal[] rates = [.. treatment.Rates.Select(rate => rate.AiLbPerAcre?.High).OfType<decimal>()];
        return rates.Length > 0 ? rates.Max() * KgPerHaInLbPerAcre : null;
    }

    /// <summary>One active of it: its share of a premix; all of it where no shares are given, which overrates it.</summary>
    public static decimal? KgPerHa(Treatment treatment, Active active)
    {
        if (TotalKgPerHa(treatment) is not { } total)
            return null;
        decimal? shares = treatment.Actives.Sum(one => one.Percent);
        return active.Percent is { } percent && shares is > 0 ? total * percent / shares : total;
    }
}
