using System.Collections.Immutable;
using System.Reflection;
using NRules.RuleModel;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Engine;

/// <summary>What an engine rule does when it matches: it links one conclusion to the match, which falls with it.</summary>
internal sealed class Concluding(Judgement judgement)
{
    private const string Link = "conclusion";

    /// <summary>The action, for building expressions.</summary>
    public static MethodInfo Method { get; } = typeof(Concluding).GetMethod(nameof(Conclude))!;

    /// <summary>Inserts, renews or leaves the conclusion of a match.</summary>
    /// <param name="context">The engine's context.</param>
    /// <param name="match">What each pattern matched.</param>
    /// <exception cref="InvalidOperationException">The engine matched what the condition tree says cannot hold: a defect.</exception>
    public void Conclude(IContext context, object[] match)
    {
        ImmutableArray<Matched> matched = [.. match.Select(MatchedOf)];
        MatchTruth truth = MatchTruth.Of(judgement, matched);
        if (truth.Truth == Truth.No)
            throw new InvalidOperationException($"the engine matched '{judgement.Id}' where its conditions cannot hold");
        Conclusion now = Conclusion.Of(judgement, matched, truth);
        if (context.GetLinked(Link) is not Conclusion before)
            context.InsertLinked(Link, now);
        else
            // Even when nothing changes by itself the facts behind it may have: reasons read the newest ones.
            context.UpdateLinked(Link, now);
    }

    // Collections come in the engine's order; they are put in ours.
    private static Matched MatchedOf(object matched) => matched switch
    {
        Fact fact => new Matched.One(fact),
        IEnumerable<FindingConclusion> evidence => new Matched.Evidence(
            [.. evidence.Order()]),
        IEnumerable<Fact> facts => new Matched.Several([.. facts.OrderBy(fact => fact.Key, StringComparer.Ordinal)]),
        _ => throw new InvalidOperationException($"a rule cannot match {matched.GetType().Name}"),
    };
}
