using System.Collections.Immutable;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Engine;

/// <summary>
/// The same conclusions without the engine: each judgement's condition tree is evaluated in full on every combination
/// of facts, findings first. Slow and plain; it says what the engine has to agree with, and why a rule did not hold.
/// </summary>
internal static class TreeInference
{
    /// <summary>Every conclusion that holds or may hold, in ordinal order of key.</summary>
    public static ImmutableArray<Conclusion> Conclude(
        IEnumerable<Judgement> judgements,
        IReadOnlyCollection<Fact> facts
    ) => ConcludeInOrder(FindingOrder.Of(judgements), facts);

    /// <summary>The same of judgements that stand in the order of <see cref="FindingOrder"/>.</summary>
    public static ImmutableArray<Conclusion> ConcludeInOrder(
        ImmutableArray<Judgement> judgements,
        IReadOnlyCollection<Fact> facts
    )
    {
        FactsByKind byKind = new(facts);
        var evidence = new Dictionary<string, List<FindingConclusion>>(StringComparer.Ordinal);
        var all = new List<Conclusion>();
        foreach (Judgement judgement in judgements)
        {
            foreach (Conclusion conclusion in Conclude(judgement, byKind, evidence))
            {
                all.Add(conclusion);
                if (conclusion is not FindingConclusion finding)
                    continue;
                if (!evidence.TryGetValue(finding.Finding, out List<FindingConclusion>? list))
                    evidence[finding.Finding] = list = [];
                list.Add(finding);
            }
        }

        return [.. all.Order()];
    }

    private static IEnumerable<Conclusion> Conclude(
        Judgement judgement,
        FactsByKind facts,
        Dictionary<string, List<FindingConclusion>> evidence
    )
    {
        foreach (ImmutableArray<Matched> match in Matches(judgement.When, 0, [], Bindings.None, facts, evidence))
        {
            MatchTruth truth = MatchTruth.Of(judgement, match);
            if (truth.Truth != Truth.No)
                yield return Conclusion.Of(judgement, match, truth);
        }
    }

    private static IEnumerable<ImmutableArray<Matched>> Matches(
        ImmutableArray<Pattern> patterns,
        int next,
        ImmutableArray<Matched> soFar,
        Bindings bindings,
        FactsByKind facts,
        Dictionary<string, List<FindingConclusion>> evidence
    )
    {
        if (next == patterns.Length)
        {
            yield return soFar;
            yield break;
        }

        foreach (Matched candidate in Candidates(patterns[next], bindings, facts, evidence))
        {
            PatternHolds outcome = PatternHolds.Of(patterns[next], candidate, bindings);
            if (outcome.Truth == Truth.No)
                continue;
            foreach (
                ImmutableArray<Matched> match in Matches(
                    patterns,
                    next + 1,
                    soFar.Add(candidate),
                    outcome.Bindings,
                    facts,
                    evidence
                )
            )
                yield return match;
        }
    }

    private static IEnumerable<Matched> Candidates(
        Pattern pattern,
        Bindings bindings,
        FactsByKind facts,
        Dictionary<string, List<FindingConclusion>> evidence
    ) =>
        pattern switch
        {
            Pattern.Fact fact => facts.Of(fact.Kind),
            Pattern.HasFinding finding => [EvidenceFor(finding, evidence)],
            Pattern.Any { Inner: Pattern.HasFinding finding } => [EvidenceFor(finding, evidence)],
            Pattern.None { Inner: Pattern.HasFinding finding } => [EvidenceFor(finding, evidence)],
            Pattern.Any { Inner: Pattern.Fact inner } => [ThatMayPass(inner, bindings, facts)],
            Pattern.None { Inner: Pattern.Fact inner } => [ThatMayPass(inner, bindings, facts)],
            _ => throw new InvalidOperationException($"no such pattern: {pattern.GetType().Name}"),
        };

    private static Matched.Evidence EvidenceFor(
        Pattern.HasFinding finding,
        Dictionary<string, List<FindingConclusion>> evidence
    ) => new(evidence.TryGetValue(finding.Id, out List<FindingConclusion>? list) ? [.. list.Order()] : []);

    private static Matched.Several ThatMayPass(Pattern.Fact inner, Bindings bindings, FactsByKind facts) =>
        new([
            .. facts
                .Of(inner.Kind)
                .Select(one => one.Fact)
                .Where(one => PatternTruth.Of(inner, one, bindings).Truth != Truth.No)
                .OrderBy(one => one.Key, StringComparer.Ordinal),
        ]);

    /// <summary>The facts, sorted once by the kinds that patterns ask for.</summary>
    private sealed class FactsByKind(IReadOnlyCollection<Fact> facts)
    {
        private readonly Dictionary<FactKind, Matched.One[]> _byKind = Enum.GetValues<FactKind>()
            .ToDictionary(
                kind => kind,
                kind =>
                    facts.Where(one => PatternTruth.IsOfKind(one, kind)).Select(one => new Matched.One(one)).ToArray()
            );

        public Matched.One[] Of(FactKind kind) => _byKind[kind];
    }
}
