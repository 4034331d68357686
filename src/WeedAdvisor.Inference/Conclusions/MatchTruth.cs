using System.Collections.Immutable;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Conclusions;

/// <summary>The truth of a whole match: all patterns of a judgement on what each of them matched.</summary>
/// <param name="Truth">Whether all hold.</param>
/// <param name="Needs">What it waits for, in order; empty unless not known.</param>
/// <param name="Premise">Certainty of the least certain finding it builds on; 1 without findings.</param>
/// <param name="MostPremise">The same, with all evidence that may hold: as certain as it can become.</param>
/// <param name="Bindings">What the variables stand for.</param>
internal sealed record MatchTruth(
    Truth Truth,
    ImmutableArray<Need> Needs,
    double Premise,
    double MostPremise,
    Bindings Bindings
)
{
    /// <summary>Evaluates every pattern, in order, in full: nothing is skipped, whatever came before.</summary>
    public static MatchTruth Of(Judgement judgement, IReadOnlyList<Matched> match)
    {
        var truth = Truth.Yes;
        SortedSet<Need>? needs = null;
        double premise = 1,
            most = 1;
        Bindings bindings = Bindings.None;
        for (int i = 0; i < match.Count; i++)
        {
            PatternHolds outcome = PatternHolds.Of(judgement.When[i], match[i], bindings);
            truth = Truths.And(truth, outcome.Truth);
            if (outcome.Truth == Truth.NotKnown)
                (needs ??= []).UnionWith(outcome.Needs);
            premise = Math.Min(premise, outcome.Certainty);
            most = Math.Min(most, outcome.MostCertainty);
            bindings = outcome.Bindings;
        }

        return new MatchTruth(truth, truth == Truth.NotKnown ? [.. needs!] : [], premise, most, bindings);
    }
}

/// <summary>The truth of one pattern on what it matched.</summary>
/// <param name="Truth">Whether it holds.</param>
/// <param name="Needs">What it waits for when it is not known.</param>
/// <param name="Certainty">Certainty of the finding it names; 1 for all else.</param>
/// <param name="MostCertainty">The same, with all evidence that may hold.</param>
/// <param name="Bindings">The variables after it.</param>
internal sealed record PatternHolds(
    Truth Truth,
    IEnumerable<Need> Needs,
    double Certainty,
    double MostCertainty,
    Bindings Bindings
)
{
    /// <summary>Evaluates one pattern.</summary>
    public static PatternHolds Of(Pattern pattern, Matched matched, Bindings bindings) =>
        (pattern, matched) switch
        {
            (Pattern.Fact fact, Matched.One one) => OfFact(PatternTruth.Of(fact, one.Fact, bindings)),
            (Pattern.HasFinding, Matched.Evidence evidence) => OfFinding(evidence, bindings),
            (Pattern.Any { Inner: Pattern.Fact inner }, Matched.Several several) => OfAny(inner, several, bindings),
            (Pattern.Any, Matched.Evidence evidence) => OfFinding(evidence, bindings),
            (Pattern.None { Inner: Pattern.Fact inner }, Matched.Several several) => Absent(
                OfAny(inner, several, bindings)
            ),
            (Pattern.None, Matched.Evidence evidence) => Absent(OfFinding(evidence, bindings)),
            _ => throw new InvalidOperationException($"{pattern.GetType().Name} cannot match {matched.GetType().Name}"),
        };

    private static PatternHolds OfFact(FactTruth fact) => new(fact.Truth, fact.Needs, 1, 1, fact.Bindings);

    private static PatternHolds OfFinding(Matched.Evidence evidence, Bindings bindings)
    {
        Truth truth = Evidences.TruthOf(evidence.Conclusions);
        return new PatternHolds(
            truth,
            truth == Truth.NotKnown ? evidence.Conclusions.SelectMany(one => one.Needs) : [],
            truth == Truth.No ? 1 : Evidences.CertaintyOf(Evidences.ThatCount(evidence.Conclusions)),
            truth == Truth.No ? 1 : Evidences.MostCertaintyOf(evidence.Conclusions),
            bindings
        );
    }

    private static PatternHolds OfAny(Pattern.Fact inner, Matched.Several several, Bindings bindings)
    {
        FactTruth[] truths = [.. several.Facts.Select(fact => PatternTruth.Of(inner, fact, bindings))];
        Truth truth = truths.Aggregate(Truth.No, (any, next) => Truths.Or(any, next.Truth));
        return new PatternHolds(truth, truths.SelectMany(one => one.Needs), 1, 1, bindings);
    }

    // Absence turns the truth round; how sure a finding would be does not weaken what follows from its absence.
    private static PatternHolds Absent(PatternHolds present) =>
        present with
        {
            Truth = Truths.Not(present.Truth),
            Certainty = 1,
            MostCertainty = 1,
        };
}
