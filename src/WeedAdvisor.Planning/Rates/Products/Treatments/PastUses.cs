using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products.Treatments;

/// <summary>An earlier use in an area.</summary>
/// <param name="Treatment">The treatment.</param>
/// <param name="Date">The day; null when not known.</param>
internal sealed record PastUse(Treatment Treatment, DateOnly? Date);

/// <summary>What was used earlier in an area. A use without a date counts as of the last twelve months.</summary>
internal static class PastUses
{
    /// <summary>All earlier uses up to the day; null when they are not known.</summary>
    public static ImmutableArray<PastUse>? Of(RateSite site)
    {
        if (site is not { Area.Past: { } past, Date: { } day })
            return null;
        return
        [
            .. past.Where(use => use.Date is null || use.Date <= day)
                .Where(use => site.Knowledge.RecordOf(use) is not null)
                .Select((PastApplication use) => new PastUse(site.Knowledge.RecordOf(use)!, use.Date)),
        ];
    }

    /// <summary>Those of the twelve months before the day, and those without a date.</summary>
    public static ImmutableArray<PastUse> InTwelveMonths(ImmutableArray<PastUse> uses, DateOnly day) =>
        [.. uses.Where(use => use.Date is null || use.Date.Value.AddYears(1) > day)];

    /// <summary>Whether a treatment holds an active.</summary>
    public static bool Holds(Treatment treatment, string active) => treatment.Actives.Any(one => one.Name == active);

    /// <summary>
    /// The part of a treatment's active ingredient that is one active: its share of the premix, and all of it when the shares
    /// are not given, so that it is never counted too low.
    /// </summary>
    public static decimal Share(Treatment treatment, string active)
    {
        decimal? sum = treatment.Actives.Aggregate((decimal?)0, (total, one) => total + one.Percent);
        return treatment.Actives.Length > 1 && sum > 0 ? treatment.Actives.Single(one => one.Name == active).Percent!.Value / sum.Value : 1;
    }

    /// <summary>
    /// The most of an active that one use may have brought, by the highest published rate, because no rate is written down
    /// with a past use; null when it cannot be told.
    /// </summary>
    public static Quantity? MostBrought(Treatment treatment, string active)
    {
        Quantity? most = PublishedRate.Of(treatment)
            .Select(rate => rate.MostActive).OfType<Quantity>()
            .OrderBy(amount => amount.InBase).Cast<Quantity?>().LastOrDefault();
        return most is { } all ? all.To("kg/ha") * Share(treatment, active) : null;
    }
}
