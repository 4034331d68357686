using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// Puts clear actions in the order of the work: by horizon; then what can be done before what lacks its tool or its
/// weather; then what clears weeds before what comes after it; then those that no doubt can outweigh, then what clears
/// the weed that covers most, then worth, then those with a figure, then the cheaper by the record, then the id. What
/// does one job stands together in the place of its best, under one rank. A total order: nothing is left to chance.
/// </summary>
internal static class Ranking
{
    /// <summary>Whether an action clears weeds that are up, now.</summary>
    public static bool Cleans(CatalogueAction action) =>
        action switch
        {
            Practice practice => practice is { When: "now", WorksOn: "standing-weeds" or "both", Kind: not "scouting" },
            // Scrubbing comes before what disinfects: dirt uses it up.
            Treatment { Role: "disinfectant" } => false,
            Treatment treatment => treatment.ActsOn.Contains("emerged"),
            _ => false,
        };

    /// <summary>The actions in order, with their horizons, worths and ranks.</summary>
    public static ImmutableArray<ClearAction> Of(IEnumerable<ClearAction> actions)
    {
        ClearAction[] all = [.. actions];
        bool isCleaned = all.Any(action => action is { Cleans: true, ComesAfterCleaning: false } && CanBeDone(action));
        return
        [
            .. all.Select(action => AfterCleaning(action, isCleaned))
                .GroupBy(action => action.Horizon)
                .SelectMany(Worthed)
                .OrderBy(action => action.Horizon)
                .ThenBy(action => !CanBeDone(action))
                .ThenBy(StepOf)
                .ThenBy(action => action.Status)
                .ThenBy(action => !action.IsOwnStep)
                // Worths that differ only in the last bits of their arithmetic are equal.
                .ThenByDescending(action => Math.Round(action.Worth, 9))
                .ThenBy(action => action.Effect.Reduction is null)
                .ThenBy(action => action.RecordUsd ?? decimal.MaxValue)
                .ThenBy(action => action.Action, StringComparer.Ordinal)
                // Of what does one job one is enough: it stands in the place of the best.
                .GroupBy(action => new { action.Horizon, Job = action.OneOf ?? action.Action })
                .SelectMany((line, index) => line.Select(action => action with { Rank = index + 1 })),
        ];
    }

    private static bool CanBeDone(ClearAction action) => action is { LacksTool: false, NotToday.IsEmpty: true };

    // While nothing can clear the surface, what wants it clear is no work of this week.
    private static ClearAction AfterCleaning(ClearAction action, bool isCleaned) =>
        action.ComesAfterCleaning && !isCleaned
            ? action with
            {
                WaitsForCleaning = true,
                Horizon = action.Horizon < Horizon.ThisSeason ? Horizon.ThisSeason : action.Horizon,
            }
            : action;

    // An action without a figure is never credited with more than the least that is known of its horizon.
    private static IEnumerable<ClearAction> Worthed(IEnumerable<ClearAction> ofHorizon)
    {
        ClearAction[] all = [.. ofHorizon];
        double least = all.Select(action => action.Effect.Reduction)
            .OfType<double>()
            .Where(reduction => reduction > 0)
            .DefaultIfEmpty(1)
            .Min();
        return all.Select(action =>
        {
            double counted = action.Effect.Reduction ?? least;
            return action with { EffectCounted = counted, Worth = action.Certainty * counted };
        });
    }

    // What keeps people from harm, and other stock from catching it, is done before anything.
    // What a weed is comes before what is done about it; what stands among films and mats
    // is pulled, and they lose what they live on before they are lifted.
    // What stands in the area itself goes before its floor and its surroundings, and both before all else.
    private static int StepOf(ClearAction action) =>
        action.IsAtOnce ? -6
        : action.Names ? -5
        : action.StarvingStep is { } step ? step - 4
        : !action.Cleans || action.ComesAfterCleaning ? 2
        : action.IsHygiene ? 1
        : 0;
}
