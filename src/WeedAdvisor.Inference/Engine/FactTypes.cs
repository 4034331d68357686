using System.Collections.Immutable;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Inference.Engine;

/// <summary>
/// The types that stand for each kind of fact in the engine: of one fact, and of the list of all such facts.
/// </summary>
internal static class FactTypes
{
    private static readonly ImmutableArray<Kind> s_all =
    [
        Of<SiteFact>(FactKind.Site),
        Of<WeedFact>(FactKind.Weed),
        Of<CropFact>(FactKind.Crop),
        Of<PastFact>(FactKind.Past),
        Of<ClosureFact>(FactKind.Closure),
        Of<LimitFact>(FactKind.Limit),
        Of<EscapeFact>(FactKind.Escape),
        Of<PracticeFact>(FactKind.Practice),
        Of<TreatmentFact>(FactKind.Treatment),
        Of<ActionFact>(FactKind.Action),
    ];

    /// <summary>The type of a single fact.</summary>
    public static Type OfOne(FactKind kind) => Find(kind).One;

    /// <summary>The type of the list of all facts of a kind.</summary>
    public static Type OfList(FactKind kind) => Find(kind).List;

    /// <summary>The lists of the facts of an area, or of the catalogue.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="areOfCatalogue">Which of the two they are.</param>
    public static IEnumerable<FactList> Lists(IEnumerable<Fact> facts, bool areOfCatalogue)
    {
        Fact[] ordered = [.. facts.OrderBy(fact => fact.Key, StringComparer.Ordinal)];
        return s_all.Where(one => one.Of.IsOfCatalogue() == areOfCatalogue).Select(one => one.Listed(ordered));
    }

    private static Kind Find(FactKind kind) => s_all.First(one => one.Of == kind);

    private static Kind Of<T>(FactKind kind)
        where T : Fact =>
        new(kind, typeof(T), typeof(FactList<T>), facts => new FactList<T>([.. facts.Where(fact => fact is T)]));

    private sealed record Kind(FactKind Of, Type One, Type List, Func<Fact[], FactList> Listed);
}
