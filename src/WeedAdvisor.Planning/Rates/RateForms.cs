using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Areas;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Mulches;
using WeedAdvisor.Planning.Rates.Products;
using WeedAdvisor.Planning.Rates.Sprayers;
using WeedAdvisor.Planning.Rates.Spreaders;
using WeedAdvisor.Planning.Rates.Tanks;
using WeedAdvisor.Planning.Rates.Uniformity;

namespace WeedAdvisor.Planning.Rates;

/// <summary>All rate sums, by group.</summary>
public static class RateForms
{
    /// <summary>The groups in the order in which a job goes.</summary>
    public static ImmutableArray<RateGroup> Groups { get; } =
    [
        AreaForms.Group,
        SprayerForms.Group,
        SpreaderForms.Group,
        UniformityForms.Group,
        ProductForms.Group,
        TankForms.Group,
        MulchForms.Group,
    ];
}

/// <summary>A group of rate sums.</summary>
/// <param name="Id">Its word, such as <c>sprayer</c>.</param>
/// <param name="Title">What its sums find out.</param>
/// <param name="Forms">The sums, the simplest first.</param>
public sealed record RateGroup(string Id, string Title, ImmutableArray<RateForm> Forms);
