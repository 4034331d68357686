using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>
/// The bars of an action, the most telling first: injury to this crop, vapour under this cover and what the law says
/// before "its label does not name the place".
/// </summary>
internal static class BarsInOrder
{
    private static readonly string[] s_topics =
    [
        "entry",
        "crop-safety",
        "propagation",
        "newly-potted-and-liners",
        "under-cover",
        "covering-and-uncovering",
        "edible-and-organic",
        "water-and-neighbours",
        "limits",
        "rotation-and-escapes",
        "law-and-protection",
        "timing-and-weather",
    ];

    /// <summary>The bars in order.</summary>
    public static IEnumerable<Reason> Of(BarredAction barred) =>
        barred
            .Because.OrderByDescending(BarGroups.SeverityOf)
            .ThenBy(reason => Array.IndexOf(s_topics, reason.Topic) is var at and >= 0 ? at : s_topics.Length)
            .ThenBy(reason => reason.Judgement, StringComparer.Ordinal);
}
