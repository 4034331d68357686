using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Limits;
using WeedAdvisor.Knowledge.Prices;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Rates.Products.Treatments;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Costs;

/// <summary>
/// What the product of one use costs: dose of each active by the published rates, times the ground, times the price of
/// a kilogram of it in that form.
/// </summary>
/// <param name="Lines">One for each active.</param>
/// <param name="Pack">The smallest pack; null where the strength is not known.</param>
/// <param name="IsInvented">Whether a price is invented.</param>
internal sealed record ProductCost(ImmutableArray<CostLine> Lines, SmallestPack? Pack, bool IsInvented)
{
    private const decimal SquareMInHa = 10_000;

    /// <summary>The product; refused when no dose on an area is published or a price is missing.</summary>
    public static Outcome<ProductCost, string> Of(Treatment treatment, TreatedGround ground, PriceBook prices)
    {
        if (DoseKgHa(treatment) is not { } dose)
            return $"no rate on an area is published for '{treatment.Id}'";
        var lines = ImmutableArray.CreateBuilder<CostLine>();
        decimal usdPerKg = 0;
        bool isInvented = false;
        foreach (Active active in treatment.Actives)
        {
            string id = PriceIdOf(active, treatment, prices);
            if (prices.Find(id) is not { } price)
                return $"the price '{id}' is missing";
            decimal share = Share(treatment, active);
            usdPerKg += share * price.Value;
            isInvented |= price.Sources.Contains("invented");
            Span kgHa = dose.Times(share);
            lines.Add(
                new CostLine(
                    id,
                    price.Name,
                    kgHa.Times(ground.SquareM / SquareMInHa * price.Value),
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{ground.Words} x {kgHa.Low:0.###} to {kgHa.High:0.###} kg of active a hectare x "
                            + $"${price.Value:#,0.##}{(prices.IsOwn(id) ? ", your price" : "")}"
                    )
                )
            );
        }

        return new ProductCost(lines.ToImmutable(), PackOf(treatment, usdPerKg, prices), isInvented);
    }

    /// <summary>
    /// All actives together on a hectare, kilograms, from the lowest published rate to the highest; null when no rate
    /// on an area is published.
    /// </summary>
    public static Span? DoseKgHa(Treatment treatment)
    {
        if (ActiveAmounts.Published(treatment) is { Least: var least, Most: { } most })
            return new Span(least, most);
        Quantity[] rates =
        [
            .. PublishedRate
                .Of(treatment)
                .Where(rate => !rate.IsInWater && rate.ActiveInProduct is not null)
                .SelectMany(rate => new[] { rate.Low * rate.ActiveInProduct, rate.High * rate.ActiveInProduct })
                .OfType<Quantity>()
                .Select(rate => rate.To("kg/ha")),
        ];
        return rates.Length == 0 ? null : new Span(rates.Min(rate => rate.Value), rates.Max(rate => rate.Value));
    }

    // A premix whose shares are not given counts each active in equal parts: its price lies between theirs.
    private static decimal Share(Treatment treatment, Active active) =>
        treatment.Actives.All(one => one.Percent is not null)
            ? ActiveAmounts.Share(treatment, active.Name)
            : 1m / treatment.Actives.Length;

    private static string PriceIdOf(Active active, Treatment treatment, PriceBook prices) =>
        ProductPrices.IdOf(prices.ActiveIdOf(active.Name), treatment.Form);

    private static SmallestPack? PackOf(Treatment treatment, decimal usdPerKg, PriceBook prices)
    {
        bool isGranule = treatment.Formulation == "GR",
            isDry = treatment.Formulation is "WG" or "WP" or "SG" or "SP";
        string id =
            isGranule ? ProductPrices.GranulePack
            : isDry ? ProductPrices.DryPack
            : ProductPrices.LiquidPack;
        if (prices.Find(id) is not { } pack)
            return null;
        decimal? kgActive = treatment.Strength switch
        {
            { Unit: "percent" } strength when isGranule || isDry => pack.Value * strength.Value / 100,
            { Unit: "lb-ai-per-gal" } strength when !isGranule && !isDry => pack.Value
                * Quantity.Of(strength.Value, "lb/gal").To("kg/L").Value,
            { Unit: "g-ai-per-litre" } strength when !isGranule && !isDry => pack.Value * strength.Value / 1000,
            _ => null,
        };
        return kgActive is { } kg
            ? new SmallestPack(
                string.Create(CultureInfo.InvariantCulture, $"{pack.Value:0.##} {pack.Unit}"),
                kg * usdPerKg
            )
            : null;
    }
}
