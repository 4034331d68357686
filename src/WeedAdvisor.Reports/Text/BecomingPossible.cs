using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Text;

/// <summary>
/// What becomes possible in an area, and when: actions that are not yet and that something speaks for.
/// </summary>
public static class BecomingPossible
{
    /// <summary>
    /// The actions in order of day and hour, then those that wait for a state alone; within one moment by id.
    /// </summary>
    public static ImmutableArray<BarredAction> Of(AreaAdvice area) =>
        [
            .. area
                .Barred.Where(action => action is { Status: ActionStatus.NotYet, IsWanted: true, Until.IsOpen: false })
                .OrderBy(action => action.Until!.From ?? DateTime.MaxValue)
                .ThenBy(action => string.Join(';', action.Until!.States), StringComparer.Ordinal)
                .ThenBy(action => action.Action, StringComparer.Ordinal),
        ];

    /// <summary>The same in lines, without what stands below "keep out" already.</summary>
    /// <param name="area">The advice.</param>
    /// <param name="today">The day of the visit.</param>
    public static IEnumerable<(string When, ImmutableArray<string> Actions)> Lines(AreaAdvice area, DateOnly today) =>
        Of(area)
            .Where(action => area.KeepOut is not { } keepOut || !keepOut.Then.Contains(action.Action))
            .GroupBy(action => When(action, today))
            .Select(group => (group.Key, group.Select(action => action.Action).ToImmutableArray()));

    private static string When(BarredAction action, DateOnly today)
    {
        string from = Figures.Sentence(UntilWords.From(action.Until!, today));
        return action.After == ActionStatus.Waits ? $"{from}, if the answers it waits for allow it" : from;
    }
}
