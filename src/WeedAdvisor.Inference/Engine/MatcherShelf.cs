using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Inference.Engine;

/// <summary>Gives equal patterns the same matcher while rules are built.</summary>
internal sealed class MatcherShelf
{
    private readonly Dictionary<Pattern, CaseMatcher> _alone = [];
    private readonly Dictionary<string, CaseMatcher.Group> _groups = new(StringComparer.Ordinal);

    /// <summary>The matcher of a pattern. One that stands alone is shared; a join belongs to its rule.</summary>
    public CaseMatcher Of(Pattern pattern, ImmutableArray<BoundVariable> bound)
    {
        if (!bound.IsEmpty)
            return Made(pattern, bound);
        if (!_alone.TryGetValue(pattern, out CaseMatcher? matcher))
            _alone[pattern] = matcher = Made(pattern, bound);
        return matcher;
    }

    /// <summary>
    /// What stands in front of a matcher that stands alone, and lets everything through. To share equal conditions the
    /// engine holds a new one against every one that follows on the same, which takes the square of their number: under
    /// a group for each attribute there are few.
    /// </summary>
    public CaseMatcher.Group GroupOf(Pattern pattern)
    {
        string name = pattern switch
        {
            Pattern.Fact { Tests: [var first, ..] } => first.Attribute,
            Pattern.Any { Inner: Pattern.Fact { Tests: [var first, ..] } } => first.Attribute,
            Pattern.None { Inner: Pattern.Fact { Tests: [var first, ..] } } => first.Attribute,
            _ => "",
        };
        if (!_groups.TryGetValue(name, out CaseMatcher.Group? group))
            _groups[name] = group = new CaseMatcher.Group();
        return group;
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
