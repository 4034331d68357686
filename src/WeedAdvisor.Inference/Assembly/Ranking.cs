using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// Puts clear actions in order: what goes on in today's weather, then those that no doubt can outweigh, then merit,
/// then the cheaper, then the id. A total order: nothing is left to chance.
/// </summary>
internal static class Ranking
{
    /// <summary>The actions in order, with their ranks.</summary>
    public static ImmutableArray<ClearAction> Of(IEnumerable<ClearAction> actions) =>
        [
            .. actions
                .OrderBy(action => !action.NotToday.IsEmpty)
                .ThenBy(action => action.Status)
                // Merits that differ only in the last bits of their arithmetic are equal.
                .ThenByDescending(action => Math.Round(action.Merit, 9))
                .ThenBy(action => action.CostUsd ?? decimal.MaxValue)
                .ThenBy(action => action.Action, StringComparer.Ordinal)
                .Select((action, index) => action with { Rank = index + 1 }),
        ];
}
