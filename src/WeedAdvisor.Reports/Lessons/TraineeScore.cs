using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Lessons;

/// <summary>A trainee's ranking held against the advice.</summary>
/// <param name="TauB">How far both orders agree, over what the trainee named and what the advice has first; null where
/// there is too little to compare.</param>
/// <param name="Missed">What the advice has first and the trainee did not name, in the order of the advice.</param>
/// <param name="NotClear">What the trainee named that is not clear here, in his order.</param>
/// <param name="First">What the advice has first, in its order.</param>
public sealed record TraineeScore(
    double? TauB,
    ImmutableArray<string> Missed,
    ImmutableArray<string> NotClear,
    ImmutableArray<string> First
)
{
    private const int LeastFirst = 3;

    /// <summary>
    /// The score. Of several that do one job any is right. What the trainee left out stands last in his order, what is
    /// not clear last in that of the advice; both as ties.
    /// </summary>
    /// <param name="area">The advice.</param>
    /// <param name="named">Ids of actions in the trainee's order; each once.</param>
    public static TraineeScore Of(AreaAdvice area, ImmutableArray<string> named)
    {
        ClearAction[] work = [.. area.Clear.Where(one => one.Horizon != Horizon.Habit)];
        int many = Math.Max(LeastFirst, named.Length);
        ClearAction[] first = [.. work.DistinctBy(LineOf).Take(many)];
        // A line of work counts as named where any of it is.
        HashSet<int> lines = [.. work.Where(one => named.Contains(one.Action)).Select(LineOf)];
        ClearAction[] missed = [.. first.Where(one => !lines.Contains(LineOf(one)))];
        string[] all = [.. named, .. missed.Select(one => one.Action)];
        int last = int.MaxValue;
        int[] theirs = [.. all.Select((_, place) => place < named.Length ? place : last)];
        int[] ours =
        [
            .. all.Select(action => work.FirstOrDefault(one => one.Action == action) is { } it ? LineOf(it) : last),
        ];
        return new TraineeScore(
            RankAgreement.TauB(theirs, ours),
            [.. missed.Select(one => one.Action)],
            [.. named.Where(action => area.Clear.All(one => one.Action != action))],
            [.. first.Select(one => one.Action)]
        );
    }

    // Ranks go through all horizons in the order of the work.
    private static int LineOf(ClearAction action) => action.Rank;
}
