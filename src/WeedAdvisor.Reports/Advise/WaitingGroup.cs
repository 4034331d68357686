using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>Actions that wait for the same answers.</summary>
/// <param name="Listed">The answers, in a few words.</param>
/// <param name="Actions">The actions.</param>
internal sealed record WaitingGroup(string Listed, ImmutableArray<string> Actions)
{
    /// <summary>
    /// The waiting actions by what they need, in the order in which they would stand if their answers let them.
    /// </summary>
    public static IEnumerable<WaitingGroup> InOrderOfWork(Names names, ImmutableArray<WaitingAction> waiting) =>
        waiting
            .GroupBy(action => List(NeedsOf(names, action)), StringComparer.Ordinal)
            .Select(group => new WaitingGroup(group.Key, [.. group.Select(item => item.Action)]));

    private static ImmutableArray<NeedWords> NeedsOf(Names names, WaitingAction action) =>
        [.. action.Needs.Order().Select(names.NeedOfAny).Distinct()];

    private static string List(ImmutableArray<NeedWords> needs) =>
        needs switch
        {
            [] => "nothing that is known",
            [var only] => only.Short,
            [.. var most, var last] => $"{string.Join(", ", most.Select(need => need.Short))} and {last.Short}",
        };
}
