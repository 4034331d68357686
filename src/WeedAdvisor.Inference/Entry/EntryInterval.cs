using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Entry;

/// <summary>
/// How long an application keeps people out, and out of what (40 CFR 170.405 and 170.407; 40 CFR 156.208 for
/// intervals). What is not known counts as the longest that is usual.
/// </summary>
/// <param name="Hours">The restricted-entry interval, hours from the end of the application.</param>
/// <param name="MostHours">The longest that it may turn out to be: a product that is not in the catalogue may be any
/// that fits.</param>
/// <param name="ClosesHouse">Whether, under film or glass, the whole house is closed and not the treated area
/// alone.</param>
/// <param name="AskedToAir">Whether a house has to be aired before anybody goes in, and has not been.</param>
internal readonly record struct EntryInterval(decimal Hours, decimal MostHours, bool ClosesHouse, bool AskedToAir)
{
    private const string Granule = "GR";

    /// <summary>The interval of one application.</summary>
    public static EntryInterval Of(PastApplication use, KnowledgeBase knowledge)
    {
        PastProduct product = PastProduct.Of(use, knowledge);
        decimal hours = product.Record?.ReiHours?.High
            ?? knowledge.Usual[product.IsWeedKiller ? UsualIds.EntryHours : UsualIds.EntryHoursOfAnything];
        bool staysLow =
            use.Method is "granules" or "low-coarse-spray"
            || (use.Method is null && product.Record is { Formulation: Granule });
        decimal most = product.Record is null ? Math.Max(hours, LongestOf(product, knowledge)) : hours;
        return new EntryInterval(hours, most, !staysLow, !staysLow && use.Aired != true);
    }

    /// <summary>
    /// Of products put on together the longest interval counts (40 CFR 170.407(c)), and the widest closing.
    /// </summary>
    public EntryInterval Together(EntryInterval other) =>
        new(
            Math.Max(Hours, other.Hours),
            Math.Max(MostHours, other.MostHours),
            ClosesHouse || other.ClosesHouse,
            AskedToAir || other.AskedToAir
        );

    private static decimal LongestOf(PastProduct product, KnowledgeBase knowledge) =>
        knowledge
            .Treatments.Values.Where(record =>
                product.Actives is null || product.Actives.Overlaps(PastProduct.ActivesOf(record))
            )
            .Select(record => record.ReiHours?.High ?? 0)
            .DefaultIfEmpty()
            .Max();
}
