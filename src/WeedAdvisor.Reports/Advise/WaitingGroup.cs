using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>Actions that wait for the same answers.</summary>
/// <param name="ListedInWords">The answers, in a few words of the grower's.</param>
/// <param name="ListedInBrief">The first few of them, and how many others.</param>
/// <param name="Actions">The actions.</param>
internal sealed record WaitingGroup(string ListedInWords, string ListedInBrief, ImmutableArray<string> Actions)
{
    private const int MostInBrief = 3;

    /// <summary>
    /// The waiting actions by what they need, in the order in which they would stand if their answers let them.
    /// </summary>
    public static IEnumerable<WaitingGroup> InOrderOfWork(Names names, ImmutableArray<WaitingAction> waiting) =>
        waiting
            .GroupBy(action => Listing.And(NeedsOf(names, action)), StringComparer.Ordinal)
            .Select(group => new WaitingGroup(
                group.Key,
                InBrief(NeedsOf(names, group.First())),
                [.. group.Select(item => item.Action)]
            ));

    private static string InBrief(ImmutableArray<string> needs) =>
        needs.Length <= MostInBrief + 1
            ? Listing.And(needs)
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{string.Join(", ", needs.Take(MostInBrief))} and {needs.Length - MostInBrief} other things"
            );

    private static ImmutableArray<string> NeedsOf(Names names, WaitingAction action) =>
        [.. action.Needs.Order().Select(names.NeedInWords).Distinct()];
}
