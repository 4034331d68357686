using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Unlock;

/// <summary>
/// Which questions have to do with it that an action does not stand as wanted: whatever answers bring it about, at
/// least one of these is among them. That keeps the search short without losing a set.
/// </summary>
internal sealed class Blame(ActionProbe probe, QuestionsBehind behind)
{
    /// <summary>The questions of which one has to change before the action is clear; null when it is.</summary>
    public IReadOnlySet<string>? ForClear(Stand stand)
    {
        if (stand.Case.Status is ActionStatus.Clear or ActionStatus.ClearUnless)
            return null;
        // One bar is enough to begin with: the one that hangs on the fewest answers.
        if (
            stand
                .Case.Bars.Where(bar => bar.IsCertain || stand.Case.Waits.Contains(bar))
                .Select(bar => behind.Of(bar.Judgement))
                .MinBy(questions => questions.Count) is
            { } ofBar
        )
            return ofBar;
        return (HashSet<string>)
            [
                .. stand.Case.Doubts.SelectMany(doubt => behind.Of(doubt.Judgement)),
                .. probe.Rules.Where(rule => rule.Then is Consequence.Argument).SelectMany(rule => ToHold(rule, stand)),
                .. stand.Case.Supports.SelectMany(support => behind.Of(support.Judgement)),
            ];
    }

    /// <summary>The questions of which one has to change before a bar holds; null when one does.</summary>
    public IReadOnlySet<string>? ForBar(Stand stand) =>
        stand.Case.IsBarred
            ? null
            : (HashSet<string>)
                [.. probe.Rules.Where(rule => rule.Then is Consequence.Bar).SelectMany(rule => ToHold(rule, stand))];

    /// <summary>The questions on which all that is said of the action hangs.</summary>
    public IReadOnlySet<string> ForOrder(Stand stand) =>
        (HashSet<string>)
            [
                .. probe.Rules.Where(rule => rule.Then is Consequence.Argument).SelectMany(rule => ToHold(rule, stand)),
                .. stand.Case.Supports.Concat(stand.Case.Doubts).SelectMany(one => behind.Of(one.Judgement)),
            ];

    // A test on the site that does not hold has to, whatever else the rule is matched on. Where none fails by itself,
    // all that the rule hangs on may be it.
    private IReadOnlySet<string> ToHold(Judgement rule, Stand stand)
    {
        if (stand.Holds(rule))
            return ImmutableHashSet<string>.Empty;
        foreach (Pattern pattern in rule.When)
        {
            if (pattern is Pattern.Fact { Kind: FactKind.Site } site)
            {
                foreach (AttributeCondition test in site.Tests.Where(test => !Variables.In(test.Test).Any()))
                {
                    if (TestTruth.Of(test.Test, stand.Site.Read(test.Attribute), Bindings.None) != Truth.Yes)
                        return behind.Attribute(test.Attribute);
                }
            }
            else if (
                pattern is Pattern.HasFinding finding
                && !stand.All.Any(one =>
                    one is FindingConclusion { IsCertain: true } made && made.Finding == finding.Id
                )
            )
            {
                return behind.Makers(finding.Id).SelectMany(maker => ToHold(maker, stand)).ToHashSet();
            }
        }

        return behind.Of(rule);
    }
}
