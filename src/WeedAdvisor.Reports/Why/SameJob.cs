using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Reports.Why;

/// <summary>What can be done in place of an action that is not clear.</summary>
internal static class SameJob
{
    // Work on the weeds themselves: what else does that can stand in for it. Of other practices only their own job can.
    private const string Weeding = "weeding",
        Covering = "covering";

    /// <summary>
    /// The best clear action of the same job; where none is, of what works on the weeds themselves the best that works
    /// on the same ones, those that stand or those to come. Null where nothing clear does that, or the action itself is
    /// clear and can be done today with the tools at hand.
    /// </summary>
    /// <param name="area">The advice for the area.</param>
    /// <param name="action">The action.</param>
    public static ClearAction? Instead(AreaAdvice area, CatalogueAction action)
    {
        if (area.Clear.Any(one => one.Action == action.Id && one is { LacksTool: false, NotToday.IsEmpty: true }))
            return null;
        ClearAction[] now =
        [
            .. area.Clear.Where(one =>
                one is { Status: ActionStatus.Clear, LacksTool: false, NotToday.IsEmpty: true, Names: false }
                && one.Horizon != Horizon.Habit
            ),
        ];
        string? job = Works.JobOf(action);
        WorksOn on = Works.On(action);
        return now.FirstOrDefault(one => job is not null && one.OneOf == job)
            ?? (
                action is Treatment or Practice { Kind: Weeding or Covering }
                    ? now.Where(one => IsOn(one, on)).OrderBy(one => one.Effect.Reduction is null).FirstOrDefault()
                    : null
            );
    }

    private static bool IsOn(ClearAction one, WorksOn on) =>
        one.WorksOn == WorksOn.Both || on == WorksOn.Both || one.WorksOn == on;
}
