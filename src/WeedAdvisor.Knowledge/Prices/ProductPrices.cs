using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge.Prices;

/// <summary>
/// Prices of chemicals: one for a kilogram of an active in granules and one in sprays, under ids made of the active
/// and the form, such as <c>prodiamine-in-granules</c>.
/// </summary>
public static class ProductPrices
{
    /// <summary>The unit of these prices.</summary>
    public const string Unit = "usd-per-kg-active";

    /// <summary>What the smallest bag of granules holds.</summary>
    public const string GranulePack = "smallest-bag-of-granules";

    /// <summary>What the smallest pack of a liquid holds.</summary>
    public const string LiquidPack = "smallest-jug-of-liquid";

    /// <summary>What the smallest pack of a dry product for spraying holds.</summary>
    public const string DryPack = "smallest-pack-of-dry-spray";

    private static readonly string[] s_forms = ["granule", "spray"];

    /// <summary>The id of the price of an active.</summary>
    /// <param name="active">The active's id.</param>
    /// <param name="form"><c>granule</c> or <c>spray</c>.</param>
    public static string IdOf(string active, string form) => $"{active}-in-{form}s";

    /// <summary>A problem for each of these prices whose id is not made of an active and a form.</summary>
    /// <param name="prices">All prices.</param>
    /// <param name="actives">The actives.</param>
    public static IEnumerable<Problem> Wrong(IEnumerable<Price> prices, IReadOnlyCollection<ActiveIngredient> actives)
    {
        HashSet<string> ids = new(
            actives.SelectMany(active => s_forms.Select(form => IdOf(active.Id, form))),
            StringComparer.Ordinal
        );
        return prices
            .Where(price => price.Unit == Unit && !ids.Contains(price.Id))
            .Select(price => new Problem(
                price.Where,
                $"the price '{price.Id}' of a kilogram of active",
                "an active and its form, as in 'prodiamine-in-granules' or 'prodiamine-in-sprays'",
                NearestWord.Of(price.Id, ids)
            ));
    }
}
