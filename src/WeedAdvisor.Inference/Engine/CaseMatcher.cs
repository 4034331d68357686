using System.Collections.Immutable;
using System.Reflection;
using NRules.RuleModel;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Engine;

/// <summary>
/// The one condition of a pattern in an engine rule: whether what the pattern looks at may pass it. A matcher stands as
/// a constant in the rule's expression, so equal patterns share one matcher and with it the engine's nodes.
/// </summary>
/// <param name="bound">The variables it needs, where each was bound; none for a condition on one fact alone.</param>
internal abstract class CaseMatcher(ImmutableArray<BoundVariable> bound)
{
    /// <summary>The test on one fact, for expressions.</summary>
    public static MethodInfo OnFact { get; } = typeof(CaseMatcher).GetMethod(nameof(May))!;

    /// <summary>The test on a fact and what was matched before it, for expressions.</summary>
    public static MethodInfo OnJoin { get; } = typeof(CaseMatcher).GetMethod(nameof(MayJoin))!;

    /// <summary>The test on one fact, for delegates of the engine.</summary>
    public static MethodInfo OnFactOfEngine { get; } = typeof(CaseMatcher).GetMethod(nameof(MayFact))!;

    /// <summary>The test on a fact and a tuple, for delegates of the engine.</summary>
    public static MethodInfo OnTupleOfEngine { get; } = typeof(CaseMatcher).GetMethod(nameof(MayTuple))!;

    /// <summary>The variables it needs, where each was bound.</summary>
    public ImmutableArray<BoundVariable> Bound { get; } = bound;

    /// <summary>Whether a fact may pass.</summary>
    public bool May(object fact) => May(fact, Bindings.None);

    /// <summary>Whether a fact may pass beside what was matched before.</summary>
    /// <param name="before">What each of <see cref="Bound"/> was bound on, in that order.</param>
    /// <param name="fact">The fact.</param>
    public bool MayJoin(object[] before, object fact)
    {
        Bindings bindings = Bindings.None;
        for (int i = 0; i < Bound.Length; i++)
            bindings = bindings.With(Bound[i].Name, ((Fact)before[i]).Read(Bound[i].Attribute));
        return May(fact, bindings);
    }

    /// <summary>As <see cref="May(object)"/>, on what the engine hands over.</summary>
    public bool MayFact(IFact fact) => May(fact.Value!);

    /// <summary>
    /// As <see cref="MayJoin"/>, on what the engine hands over: a tuple holds one fact for each earlier pattern, the
    /// last first.
    /// </summary>
    public bool MayTuple(ITuple tuple, IFact fact)
    {
        object[] before = new object[Bound.Length];
        int pattern = tuple.Count;
        foreach (IFact earlier in tuple.Facts)
        {
            pattern--;
            for (int i = 0; i < Bound.Length; i++)
            {
                if (Bound[i].Pattern == pattern)
                    before[i] = earlier.Value!;
            }
        }

        return MayJoin(before, fact.Value!);
    }

    /// <summary>Whether a fact may pass.</summary>
    /// <param name="fact">What the pattern looks at.</param>
    /// <param name="bindings">What the variables stand for.</param>
    protected abstract bool May(object fact, Bindings bindings);

    /// <summary>A pattern on single facts.</summary>
    public sealed class One(Pattern.Fact pattern, ImmutableArray<BoundVariable> bound) : CaseMatcher(bound)
    {
        /// <inheritdoc/>
        protected override bool May(object fact, Bindings bindings) =>
            PatternTruth.MayPass(pattern, (Fact)fact, bindings);
    }

    /// <summary>There is such a fact, or (absent) there is none, among all of a kind.</summary>
    public sealed class OfList(Pattern.Fact inner, bool isAbsent, ImmutableArray<BoundVariable> bound)
        : CaseMatcher(bound)
    {
        /// <inheritdoc/>
        protected override bool May(object fact, Bindings bindings)
        {
            // "May be there": one may pass. "May be absent": none passes for sure.
            foreach (Fact one in ((FactList)fact).Facts)
            {
                if (
                    isAbsent
                        ? PatternTruth.Of(inner, one, bindings).Truth == Truth.Yes
                        : PatternTruth.MayPass(inner, one, bindings)
                )
                    return !isAbsent;
            }

            return isAbsent;
        }
    }

    /// <summary>A finding has been made, or (absent) has not.</summary>
    public sealed class OfFinding(string id, bool isAbsent) : CaseMatcher([])
    {
        /// <inheritdoc/>
        protected override bool May(object fact, Bindings bindings) =>
            fact is FindingFact finding
            && finding.Id == id
            && (isAbsent ? Truths.Not(finding.Truth) : finding.Truth) != Truth.No;
    }

    /// <summary>Lets everything through: see <see cref="MatcherShelf.GroupOf"/>.</summary>
    public sealed class Group() : CaseMatcher([])
    {
        /// <inheritdoc/>
        protected override bool May(object fact, Bindings bindings) => true;
    }
}

/// <summary>A variable and where it was bound.</summary>
/// <param name="Name">The variable's name.</param>
/// <param name="Pattern">The place, in the rule, of the pattern that binds it.</param>
/// <param name="Attribute">The attribute that it stands for.</param>
internal sealed record BoundVariable(string Name, int Pattern, string Attribute);
