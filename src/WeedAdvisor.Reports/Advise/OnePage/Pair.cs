using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>
/// The first preventive of an area and the one that completes it: of another site of action, and rated good or fair on
/// weeds that the first is rated poor on or has no figure for.
/// </summary>
/// <param name="Best">The first preventive.</param>
/// <param name="Partner">What completes it.</param>
/// <param name="Weeds">The weeds for which it does.</param>
/// <param name="Needs">What has to be known before the partner may go on; empty where it is clear.</param>
internal sealed record Pair(string Best, string Partner, ImmutableArray<string> Weeds, ImmutableArray<Need> Needs)
{
    /// <summary>The pair; null where the first leaves nothing, or nothing here completes it.</summary>
    /// <param name="names">Where names come from.</param>
    /// <param name="area">The advice on the area.</param>
    /// <param name="free">The chemicals that may go on, the best first.</param>
    /// <param name="likely">Those that wait, the likeliest first.</param>
    public static Pair? Of(
        Names names,
        AreaAdvice area,
        ImmutableArray<FreeChemical> free,
        ImmutableArray<WaitingAction> likely
    )
    {
        (string Id, ImmutableArray<Need> Needs)[] preventives =
        [
            .. free.Where(one => one.Use == FreeUse.OnComing)
                .OrderBy(one => one.IsLast)
                .Select(one => (one.Action, ImmutableArray<Need>.Empty)),
            .. free.Where(one => one is { Use: FreeUse.Little, Cleared.WorksOn: WorksOn.Coming })
                .Select(one => (one.Action, ImmutableArray<Need>.Empty)),
            .. likely.Where(one => one.IfClear?.WorksOn == WorksOn.Coming).Select(one => (one.Action, one.Needs)),
        ];
        if (preventives is not [var best, .. var others] || names.Treatment(best.Id) is not { } first)
            return null;
        string[] left =
        [
            .. (area.Area.Weeds ?? [])
                .Select(seen => seen.Weed)
                .Concat(area.Reading.Coming.Weeds.Where(weed => !weed.BlowsIn).Select(weed => weed.Weed))
                .Distinct(StringComparer.Ordinal)
                .Where(weed => !Holds(names, area, first, weed)),
        ];
        return others
            .Select(other => (other, Weeds: WeedsOf(names, area, first, other.Id, left)))
            .Where(one => one.Weeds.Length > 0)
            .OrderByDescending(one => one.Weeds.Length)
            .ThenBy(one => one.other.Needs.Length)
            .Select(one => new Pair(best.Id, one.other.Id, one.Weeds, one.other.Needs))
            .FirstOrDefault();
    }

    private static ImmutableArray<string> WeedsOf(
        Names names,
        AreaAdvice area,
        Treatment first,
        string other,
        string[] left
    ) =>
        names.Treatment(other) is { } partner
        && !partner.Actives.Any(active => first.Actives.Any(one => one.Group == active.Group))
            ? [.. left.Where(weed => Holds(names, area, partner, weed))]
            : [];

    private static bool Holds(Names names, AreaAdvice area, Treatment treatment, string weed) =>
        names.Grade(treatment, weed, area.Area) is "good" or "fair";
}
