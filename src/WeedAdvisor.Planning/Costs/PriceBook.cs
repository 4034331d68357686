using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Prices;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Costs;

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

    /// <summary>Whether the price is the grower's own.</summary>
    public bool IsOwn(string id) => _own.ContainsKey(id);

    /// <summary>
    /// The grower's own price of the materials of one use of an action on 1000 pots, or on 100 m² without pots; null
    /// when there is none.
    /// </summary>
    public Price? OwnPriceOf(CatalogueAction action) => _own.GetValueOrDefault(action.Id);

    /// <summary>The id of the active with an ISO common name; the name where no record has it.</summary>
    internal string ActiveIdOf(string name) =>
        _knowledge.Ingredients.ContainsKey(name)
            ? name
            : _knowledge.Ingredients.Values.FirstOrDefault(active => active.Name == name)?.Id ?? name;

    /// <summary>Where the shipped prices come from.</summary>
    internal KnowledgeBase Knowledge => _knowledge;
}
