using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// The order of what waits for an answer: what could be done soonest, then what promises most, then what waits for
/// least. The first chemical in it is the likely one, on the page and for the next question.
/// </summary>
internal static class WaitingOrder
{
    /// <summary>The most an action can be worth, 0 to 1: a missing effect counts nothing.</summary>
    public static double Promise(ActionCase one, ClearAction sketch) =>
        one.MostCertainty * (sketch.Effect.Reduction ?? 0);

    /// <summary>Those of the cases that wait, in order.</summary>
    /// <param name="cases">The cases.</param>
    /// <param name="sketches">Each as it would stand if it were clear.</param>
    public static IEnumerable<ActionCase> Of(
        IEnumerable<ActionCase> cases,
        IReadOnlyDictionary<string, ClearAction> sketches
    ) =>
        cases
            .Where(one => one.Status == ActionStatus.Waits)
            .OrderBy(one => sketches[one.Action].Horizon)
            // Promises that differ only in the last bits of their arithmetic are equal.
            .ThenByDescending(one => Math.Round(Promise(one, sketches[one.Action]), 9))
            .ThenBy(one => one.Needs.Length)
            .ThenBy(one => one.Action, StringComparer.Ordinal);
}
