using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// Puts clear actions in order: what goes on in today's weather, then those that no doubt can outweigh, then merit,
/// then the cheaper, then the id. What comes after the cleaning stands behind the best cleaning, however much it
/// promises. A total order: nothing is left to chance.
/// </summary>
internal static class Ranking
{
    /// <summary>Whether an action clears weeds that are up, now.</summary>
    public static bool Cleans(CatalogueAction action) =>
        action switch
        {
            Practice practice => practice is { When: "now", WorksOn: "standing-weeds" or "both", Kind: not "scouting" },
            Treatment treatment => treatment.ActsOn.Contains("emerged"),
            _ => false,
        };

    /// <summary>The actions in order, with their ranks.</summary>
    public static ImmutableArray<ClearAction> Of(IEnumerable<ClearAction> actions)
    {
        ClearAction[] all = [.. actions];
        double cleaning = all.Where(action =>
                action is { Cleans: true, ComesAfterCleaning: false, NotToday.IsEmpty: true }
            )
            .Select(action => action.Merit)
            .DefaultIfEmpty(1)
            .Max();
        return
        [
            .. all.OrderBy(action => !action.NotToday.IsEmpty)
                .ThenBy(action => action.Status)
                // Merits that differ only in the last bits of their arithmetic are equal.
                .ThenByDescending(action =>
                    Math.Round(action.ComesAfterCleaning ? Math.Min(action.Merit, cleaning) : action.Merit, 9)
                )
                .ThenBy(action => action.ComesAfterCleaning)
                .ThenByDescending(action => Math.Round(action.Merit, 9))
                .ThenBy(action => action.CostUsd ?? decimal.MaxValue)
                .ThenBy(action => action.Action, StringComparer.Ordinal)
                .Select((action, index) => action with { Rank = index + 1 }),
        ];
    }
}
