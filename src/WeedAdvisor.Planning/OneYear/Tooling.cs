using System.Globalization;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Planning.Costs;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>What a tool that has to be bought costs in a year.</summary>
/// <param name="Id">The tool: an answer of <c>equipment</c>, and the id of its price.</param>
/// <param name="Name">Its name.</param>
/// <param name="PurchaseUsd">Its price, US dollars.</param>
/// <param name="YearlyUsd">Loss of value and interest, US dollars a year.</param>
/// <param name="Working">How the yearly cost comes about.</param>
public sealed record BoughtTool(string Id, string Name, decimal PurchaseUsd, decimal YearlyUsd, string Working);

/// <summary>Which tool an action uses, and what it costs when it has to be bought.</summary>
internal static class Tooling
{
    private const decimal Percent = 100;

    private static readonly string[] s_terms = ["equipment-life", "equipment-salvage", "interest", "inflation"];

    /// <summary>The first of the prices that is missing for any purchase; null when all are there.</summary>
    private static string? Missing(PriceBook prices) => s_terms.FirstOrDefault(id => prices.Find(id) is null);

    /// <summary>
    /// The cheapest of the tools that would do, with its price; null when one is there already or none is needed.
    /// </summary>
    /// <param name="needed">Tools of which one suffices.</param>
    /// <param name="present">Tools that are there.</param>
    /// <param name="prices">The prices.</param>
    /// <param name="life">Years it lasts; null for the price <c>equipment-life</c>.</param>
    /// <param name="missing">The price that is missing, when the tool cannot be reckoned.</param>
    public static BoughtTool? Of(WordSet needed, WordSet present, PriceBook prices, decimal? life, out string? missing)
    {
        missing = null;
        if (needed.Count == 0 || needed.Any(present.Contains))
            return null;
        var priced = needed
            .Select(id => (Id: id, Price: prices.Find(id)))
            .Where(tool => tool.Price is not null)
            .OrderBy(tool => tool.Price!.Value)
            .ThenBy(tool => tool.Id, StringComparer.Ordinal)
            .FirstOrDefault();
        missing = priced.Price is null ? needed.Order(StringComparer.Ordinal).First() : Missing(prices);
        return missing is null ? Bought(priced.Id, prices, life) : null;
    }

    private static BoughtTool Bought(string id, PriceBook prices, decimal? life)
    {
        decimal Value(string price) => prices.Find(price)!.Value;
        decimal purchase = Value(id);
        decimal salvage = purchase * Math.Min(Percent, Value("equipment-salvage")) / Percent;
        decimal rate = Math.Min(1, CapitalRecovery.RealRate(Value("interest") / Percent, Value("inflation") / Percent));
        int years = (int)Math.Clamp(Math.Round(life ?? Value("equipment-life")), 1, CapitalRecovery.LongestLife);
        decimal yearly = CapitalRecovery.YearlyUsd(purchase, salvage, rate, years);
        return new BoughtTool(
            id,
            prices.Find(id)!.Name,
            purchase,
            yearly,
            string.Create(
                CultureInfo.InvariantCulture,
                $"(${purchase:#,0} - ${salvage:#,0}) x {CapitalRecovery.Factor(rate, years):0.####} + ${salvage:#,0} x "
                    + $"{rate:0.###}"
                    + $" = ${yearly:#,0.##} a year ({years} years, {rate * Percent:0.##} % above inflation)"
            )
        );
    }
}
