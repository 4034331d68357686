using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>
/// Reasons, the most telling first: one that rests on more of what was found here says more than one that holds
/// everywhere; of two alike the stronger, and then the one on the weed that stands widest.
/// </summary>
internal static class ReasonsInOrder
{
    private const string AnyPlace = "site";
    private const string Weed = "weed";

    /// <summary>The reasons in order.</summary>
    /// <param name="reasons">The reasons.</param>
    /// <param name="weeds">Names of the weeds here, the most important first.</param>
    public static IEnumerable<Reason> Of(IEnumerable<Reason> reasons, ImmutableArray<string> weeds) =>
        reasons
            .OrderByDescending(TellsOf)
            .ThenByDescending(reason => reason.Certainty)
            .ThenBy(reason => PlaceOf(reason, weeds))
            .ThenBy(reason => reason.Judgement, StringComparer.Ordinal);

    /// <summary>Names of the weeds of an area: those that are up before those to come, the widest first.</summary>
    public static ImmutableArray<string> WeedsOf(Names names, VisitArea area) =>
        [
            .. (area.Weeds ?? [])
                .OrderByDescending(seen => seen.IsUp == true)
                .ThenByDescending(seen => seen.CoverPercent ?? 0)
                .Select(seen => names.Weed(seen.Weed)),
        ];

    /// <summary>Names of the weeds that a reason speaks of.</summary>
    public static IEnumerable<string> WeedsIn(Reason reason) =>
        reason.Subjects.Where(subject => subject.Pattern == Weed).Select(subject => subject.Fact);

    /// <summary>The place of the first weed that a reason speaks of, behind all where it speaks of none.</summary>
    public static int PlaceOf(Reason reason, ImmutableArray<string> weeds) =>
        WeedsIn(reason)
            .Select(weed => weeds.IndexOf(weed))
            .Select(place => place < 0 ? weeds.Length : place)
            .DefaultIfEmpty(weeds.Length)
            .Min();

    // A weed or a crop by name, then what was found, then an answer on the place.
    private static int TellsOf(Reason reason) =>
        reason
            .Subjects.Select(subject =>
                subject.Pattern switch
                {
                    Weed or "crop" or "past" => 3,
                    "finding" => 2,
                    AnyPlace => 1,
                    _ => 0,
                }
            )
            .DefaultIfEmpty(0)
            .Max();
}
