using System.Collections.Immutable;
using WeedAdvisor.Knowledge;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// The order in which work is told: by day, and inside a week clean first, then cover, then put on, then water in. What
/// is laid on pots that still have weeds in them hides them and holds nothing back.
/// </summary>
internal static class WorkOrder
{
    private const string Covering = "covering";
    private const int DaysInWeek = 7;

    /// <summary>The work in its order. A cover waits for a cleaning that begins while it may still be laid.</summary>
    /// <param name="work">The work, in any order.</param>
    /// <param name="knowledge">Knows which practices lay something on the pots.</param>
    public static ImmutableArray<PlannedWork> Of(IEnumerable<PlannedWork> work, KnowledgeBase knowledge)
    {
        PlannedWork[] all = [.. work];
        return
        [
            .. all.Select(one => IsCover(one, knowledge) ? AfterCleaning(one, all) : one)
                .OrderBy(one => one.Day)
                .ThenBy(one => Place(one, knowledge))
                .ThenBy(one => one.Action, StringComparer.Ordinal),
        ];
    }

    private static PlannedWork AfterCleaning(PlannedWork cover, PlannedWork[] all)
    {
        DateOnly[] cleaned =
        [
            .. all.Where(one => one.Kind is PlannedWorkKind.CleanUp or PlannedWorkKind.Round).Select(one => one.Day),
        ];
        if (cleaned.Any(day => day <= cover.Day && day > cover.Day.AddDays(-DaysInWeek)))
            return cover;
        DateOnly[] still = [.. cleaned.Where(day => day > cover.Day && day <= cover.LastDay).Order()];
        return still is [var first, ..] ? cover with { Day = first } : cover;
    }

    private static int Place(PlannedWork work, KnowledgeBase knowledge) =>
        work.Kind switch
        {
            PlannedWorkKind.Practice => IsCover(work, knowledge) ? 3 : 0,
            PlannedWorkKind.CleanUp => 1,
            PlannedWorkKind.Round => 2,
            PlannedWorkKind.Apply => 4,
            PlannedWorkKind.WaterIn => 5,
            PlannedWorkKind.Film => 6,
            _ => 7,
        };

    private static bool IsCover(PlannedWork work, KnowledgeBase knowledge) =>
        work is { Kind: PlannedWorkKind.Practice, Action: { } id }
        && knowledge.Practices.GetValueOrDefault(id)?.Kind == Covering;
}
