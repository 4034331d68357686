using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>What is to be done first in an area.</summary>
public static class FirstThings
{
    /// <summary>How many things are first.</summary>
    public const int Many = 3;

    /// <summary>
    /// The first things, in order: of several that do one job the best; habits of the nursery are no work of a day.
    /// </summary>
    public static ImmutableArray<string> Of(ImmutableArray<ClearAction> clear) => In(clear, Many);

    /// <summary>As many as are wanted, in order.</summary>
    internal static ImmutableArray<string> In(ImmutableArray<ClearAction> clear, int many) =>
        [
            .. clear
                .Where(action => action.Horizon != Horizon.Habit)
                .DistinctBy(action => action.Rank)
                .Take(many)
                .Select(action => action.Action),
        ];
}
