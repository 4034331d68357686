using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Advise;

/// <summary>
/// What to mind with an action, in the order in which it is told wherever it is told: what keeps somebody from being
/// hurt, what goes with the name, what rests on a weed or crop that stands here or on the place, what its record says,
/// and then what holds everywhere.
/// </summary>
internal static class CautionsInOrder
{
    /// <summary>What holds for sure, in order.</summary>
    public static ImmutableArray<ActionCaution> Of(IEnumerable<ActionCaution> cautions) =>
        [
            .. cautions
                .Where(caution => caution.IsCertain)
                .OrderBy(caution => !caution.ProtectsPeople)
                .ThenBy(caution => !caution.GoesWithItsName)
                .ThenByDescending(caution => caution.Nearness),
        ];

    /// <summary>
    /// How many are told where there is room for some: what keeps somebody from being hurt always is.
    /// </summary>
    /// <param name="inOrder">The cautions in order.</param>
    /// <param name="most">How many there is room for.</param>
    public static int Shown(ImmutableArray<ActionCaution> inOrder, int most) =>
        Math.Max(inOrder.Count(caution => caution.ProtectsPeople), Math.Min(most, inOrder.Length));
}
