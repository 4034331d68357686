using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Prices;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>What the materials of one use of an action cost, for 1000 pots or 100 m² of floor.</summary>
/// <param name="Usd">US dollars, from the least to the most.</param>
/// <param name="Working">How that comes about.</param>
public sealed record Materials(Span Usd, string Working);

/// <summary>The shipped prices with the grower's own in their place.</summary>
public sealed class PriceBook
{
    private readonly KnowledgeBase _knowledge;
    private readonly ImmutableSortedDictionary<string, Price> _own;

    private PriceBook(KnowledgeBase knowledge, ImmutableSortedDictionary<string, Price> own)
    {
        _knowledge = knowledge;
        _own = own;
    }

    /// <summary>A book of prices.</summary>
    /// <param name="knowledge">Where the shipped prices come from.</param>
    /// <param name="own">The grower's own, each id once; see <see cref="PriceFile"/>.</param>
    public static PriceBook Of(KnowledgeBase knowledge, IEnumerable<Price>? own = null) =>
        new(
            knowledge,
            (own ?? []).ToImmutableSortedDictionary(price => price.Id, price => price, StringComparer.Ordinal)
        );

    /// <summary>The grower's own prices, in ordinal order of id.</summary>
    public IEnumerable<Price> Own => _own.Values;

    /// <summary>The price with this id, the grower's own first; null when there is none.</summary>
    public Price? Find(string id) => _own.GetValueOrDefault(id) ?? _knowledge.Prices.GetValueOrDefault(id);

    /// <summary>
    /// What the materials of an action cost. The grower's own price for the action counts first. Otherwise the record's
    /// figure counts; where it follows a price, it moves with it. Null when the record has no cost.
    /// </summary>
    public Materials? MaterialsOf(CatalogueAction action)
    {
        if (_own.TryGetValue(action.Id, out Price? whole))
            return new Materials(new Span(whole.Value, whole.Value), "your price for one use");
        if (action.Cost is not { } cost)
            return null;
        if (cost.Price is not { } id || _knowledge.Prices.GetValueOrDefault(id) is not { Value: > 0 } shipped)
            return new Materials(cost.MaterialsUsd, "the record's figure");
        Price now = Find(id)!;
        var amount = new Span(cost.MaterialsUsd.Low / shipped.Value, cost.MaterialsUsd.High / shipped.Value);
        return new Materials(
            new Span(amount.Low * now.Value, amount.High * now.Value),
            string.Create(
                CultureInfo.InvariantCulture,
                $"{amount.Middle:0.##} {UnitOf(shipped)} at "
                    + $"${now.Value:0.##}{(_own.ContainsKey(id) ? ", your price" : "")}"
            )
        );
    }

    private static string UnitOf(Price price) =>
        price.Unit switch
        {
            "usd-each" => "pieces",
            "usd-per-1000-pots" => "x the usual dose",
            "usd-per-m3" => "m³",
            "usd-per-m2" => "m²",
            var unit => unit.Replace("usd-per-", "", StringComparison.Ordinal),
        };
}
