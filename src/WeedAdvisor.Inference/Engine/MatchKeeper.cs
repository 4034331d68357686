using System.Collections.Immutable;
using NRules.Extensibility;
using NRules.RuleModel;
using WeedAdvisor.Inference.Conclusions;

namespace WeedAdvisor.Inference.Engine;

/// <summary>
/// Stands between the engine and what its rules do: keeps what every match says for as long as it matches, outside
/// working memory, and puts findings back into it. One for each session.
/// </summary>
/// <param name="rules">The rules by name.</param>
/// <param name="findings">The findings by id.</param>
internal sealed class MatchKeeper(
    IReadOnlyDictionary<string, CaseRule> rules,
    IReadOnlyDictionary<string, FindingFact> findings
) : IActionInterceptor
{
    // The engine keeps one object for a match through its whole life.
    private readonly Dictionary<IMatch, CaseMatch> _kept = new(ReferenceEqualityComparer.Instance);

    /// <summary>What holds or may hold, in ordinal order.</summary>
    public ImmutableArray<CaseMatch> Kept
    {
        get
        {
            CaseMatch[] kept = [.. _kept.Values];
            Array.Sort(kept, CaseMatch.InOrder);
            return [.. kept];
        }
    }

    /// <inheritdoc/>
    public void Intercept(IContext context, IReadOnlyCollection<IActionInvocation> actions)
    {
        IMatch match = context.Match;
        if (match.Trigger == MatchTrigger.Removed)
        {
            if (_kept.Remove(match, out CaseMatch? gone) && FindingOf(gone) is { } less)
            {
                less.Take(match);
                context.Update(less);
            }

            return;
        }

        CaseRule rule = rules[context.Rule.Name];
        CaseMatch now = rule.MatchOf([.. match.Facts.Select(fact => fact.Value!)]);
        _kept[match] = now;
        if (FindingOf(now) is not { } more)
            return;
        more.Put(match, (FindingConclusion)now.OnArea());
        context.Update(more);
    }

    private FindingFact? FindingOf(CaseMatch match) =>
        match.Judgement.Then is Knowledge.Judgements.Consequence.MakesFinding finding ? findings[finding.Id] : null;
}
