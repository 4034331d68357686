using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Unlock;

namespace WeedAdvisor.Reports.Unlock;

/// <summary>What would change how an action stands in one area, as far as it is told.</summary>
/// <param name="Clear">What would clear it, within the least reach in which anything does.</param>
/// <param name="ClearReach">That reach.</param>
/// <param name="Bar">What would bar it.</param>
/// <param name="First">What would bring it first among what is for the same time, by the grower's hand.</param>
public sealed record Unlocks(Unlocked Clear, UnlockReach ClearReach, Unlocked Bar, Unlocked First)
{
    /// <summary>Works it out; null when there is no such action.</summary>
    public static Unlocks? Of(Advisor advisor, AreaCase looked, AreaAdvice area, string action)
    {
        if (UnlockSearch.For(advisor, looked, action) is not { } search)
            return null;
        (Unlocked clear, UnlockReach reach) = Within(search, UnlockGoal.Clear);
        bool isBarred = area.Barred.Any(one => one.Action == action);
        return new Unlocks(
            clear,
            reach,
            isBarred ? new Unlocked(UnlockGoal.Bar, [], false) : Within(search, UnlockGoal.Bar).Found,
            clear.Sets.IsEmpty || reach != UnlockReach.Grower
                ? new Unlocked(UnlockGoal.First, [], false)
                : search.Of(UnlockGoal.First, UnlockReach.Grower)
        );
    }

    // What nobody changes is only told where nothing nearer does it.
    private static (Unlocked Found, UnlockReach Reach) Within(UnlockSearch search, UnlockGoal goal)
    {
        foreach (UnlockReach reach in (UnlockReach[])[UnlockReach.Grower, UnlockReach.Time])
        {
            if (search.Of(goal, reach) is { Sets.IsEmpty: false } found)
                return (found, reach);
        }

        return (search.Of(goal, UnlockReach.All), UnlockReach.All);
    }
}
