using System.Collections.Immutable;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Engine;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;

namespace WeedAdvisor.Inference.Tests.Oracle;

/// <summary>What a judgement is said to conclude of some facts, and whether for sure.</summary>
/// <param name="Judgement">The judgement's id.</param>
/// <param name="Facts">Keys of the weeds, crops and actions matched, in the order of the patterns.</param>
/// <param name="Action">The id of the action; null without one.</param>
/// <param name="IsCertain">Whether it is said to hold for sure.</param>
internal sealed record Said(string Judgement, ImmutableArray<string> Facts, string? Action, bool IsCertain)
{
    private const string StandIn = "/?";

    /// <summary>Judgement and facts.</summary>
    public string Id => $"{Judgement}({string.Join(' ', Facts)})";

    /// <summary>Judgement and action, whatever else was matched.</summary>
    public string About => $"{Judgement}: {Action}";

    /// <summary>Whether it speaks of a weed or crop of a list that nobody has told.</summary>
    public bool IsOfUntold => Facts.Any(fact => fact.EndsWith(StandIn, StringComparison.Ordinal));
}

/// <summary>The one place of the oracle that asks the program for conclusions.</summary>
internal static class Asked
{
    /// <summary>What the engine concludes.</summary>
    public static Said[] OfEngine(KnowledgeBase knowledge, AreaCase looked) =>
        Of(
            RuleEngine
                .Of(knowledge.Judgements, CatalogueFacts.Of(knowledge))
                .Open()
                .Change(AreaFacts.Of(knowledge, looked))
                .All()
        );

    /// <summary>What the tree concludes.</summary>
    public static Said[] OfTree(KnowledgeBase knowledge, AreaCase looked) =>
        Of(
            TreeInference.Conclude(
                knowledge.Judgements,
                [.. CatalogueFacts.Of(knowledge), .. AreaFacts.Of(knowledge, looked)]
            )
        );

    private static Said[] Of(IEnumerable<Conclusion> conclusions) =>
        [
            .. conclusions.Select(one => new Said(
                one.Judgement.Id,
                [
                    .. one
                        .Match.OfType<Matched.One>()
                        .Select(matched => matched.Fact)
                        .Where(fact => fact is WeedFact or CropFact or ActionFact)
                        .Select(fact => fact.Key),
                ],
                one.Action?.Id,
                one.IsCertain
            )),
        ];
}
