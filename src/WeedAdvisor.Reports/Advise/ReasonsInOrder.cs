using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Advise;

/// <summary>
/// Reasons, the most telling first: one that rests on more of what was found here says more than one that holds
/// everywhere; of two alike the stronger.
/// </summary>
internal static class ReasonsInOrder
{
    private const string AnyPlace = "site";

    /// <summary>The reasons in order.</summary>
    public static IEnumerable<Reason> Of(IEnumerable<Reason> reasons) =>
        reasons
            .OrderByDescending(TellsOf)
            .ThenByDescending(reason => reason.Certainty)
            .ThenBy(reason => reason.Judgement, StringComparer.Ordinal);

    // A weed or a crop by name, then what was found, then an answer on the place.
    private static int TellsOf(Reason reason) =>
        reason
            .Matched.Select(matched =>
                matched.Pattern switch
                {
                    "weed" or "crop" or "past" => 3,
                    "finding" => 2,
                    AnyPlace => 1,
                    _ => 0,
                }
            )
            .DefaultIfEmpty(0)
            .Max();
}
