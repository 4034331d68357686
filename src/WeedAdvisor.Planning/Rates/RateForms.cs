using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Sprayers;
using WeedAdvisor.Planning.Rates.Spreaders;
using WeedAdvisor.Planning.Rates.Uniformity;

namespace WeedAdvisor.Planning.Rates;

/// <summary>All rate sums, by group.</summary>
public static class RateForms
{
    /// <summary>The groups in the order in which a job goes.</summary>
    public static ImmutableArray<RateGroup> Groups { get; } =
    [
        SprayerForms.Group,
        SpreaderForms.Group,
        UniformityForms.Group,
    ];
}

/// <summary>A group of rate sums.</summary>
/// <param name="Id">Its word, such as <c>sprayer</c>.</param>
/// <param name="Title">What its sums find out.</param>
/// <param name="Forms">The sums, the simplest first.</param>
public sealed record RateGroup(string Id, string Title, ImmutableArray<RateForm> Forms);
