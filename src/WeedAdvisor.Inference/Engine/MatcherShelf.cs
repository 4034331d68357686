using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Inference.Engine;

/// <summary>Gives equal patterns the same matcher while rules are built.</summary>
internal sealed class MatcherShelf
{
    private readonly Dictionary<Pattern, CaseMatcher> _alone = [];

    /// <summary>The matcher of a pattern. One that stands alone is shared; a join belongs to its rule.</summary>
    public CaseMatcher Of(Pattern pattern, ImmutableArray<BoundVariable> bound)
    {
        if (!bound.IsEmpty)
            return Made(pattern, bound);
        if (!_alone.TryGetValue(pattern, out CaseMatcher? matcher))
            _alone[pattern] = matcher = Made(pattern, bound);
        return matcher;
    }

    private static CaseMatcher Made(Pattern pattern, ImmutableArray<BoundVariable> bound) =>
        pattern switch
        {
            Pattern.Fact fact => new CaseMatcher.One(fact, bound),
            Pattern.Any { Inner: Pattern.Fact inner } => new CaseMatcher.OfList(inner, isAbsent: false, bound),
            Pattern.None { Inner: Pattern.Fact inner } => new CaseMatcher.OfList(inner, isAbsent: true, bound),
            Pattern.HasFinding finding => new CaseMatcher.OfFinding(finding.Id, isAbsent: false),
            Pattern.Any { Inner: Pattern.HasFinding finding } => new CaseMatcher.OfFinding(finding.Id, isAbsent: false),
            Pattern.None { Inner: Pattern.HasFinding finding } => new CaseMatcher.OfFinding(finding.Id, isAbsent: true),
            _ => throw new InvalidOperationException($"no such pattern: {pattern.GetType().Name}"),
        };
}
