using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>Actions that wait for the same answers.</summary>
/// <param name="ListedInWords">The answers, in a few words of the grower's.</param>
/// <param name="Actions">The actions.</param>
internal sealed record WaitingGroup(string ListedInWords, ImmutableArray<string> Actions)
{
    /// <summary>
    /// The waiting actions by what they need, in the order in which they would stand if their answers let them.
    /// </summary>
    public static IEnumerable<WaitingGroup> InOrderOfWork(Names names, ImmutableArray<WaitingAction> waiting) =>
        waiting
            .GroupBy(action => Listing.And(NeedsOf(names, action)), StringComparer.Ordinal)
            .Select(group => new WaitingGroup(group.Key, [.. group.Select(item => item.Action)]));

    private static ImmutableArray<string> NeedsOf(Names names, WaitingAction action) =>
        [.. action.Needs.Order().Select(names.NeedInWords).Distinct()];
}
