using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Advise;

namespace WeedAdvisor.Reports.Text;

/// <summary>What becomes of actions that wait for the same answers, should the answers let them.</summary>
internal static class WaitingWords
{
    private const int MostOthers = 2;

    /// <summary>
    /// The likely choice after these answers with what it would do and why, and what else they may free.
    /// </summary>
    /// <param name="names">Where names come from.</param>
    /// <param name="area">The area.</param>
    /// <param name="group">The actions, the likeliest first.</param>
    /// <param name="most">How many others are named.</param>
    public static string Of(Names names, AreaAdvice area, WaitingGroup group, int most)
    {
        WaitingAction best = area.Waiting.First(one => one.Action == group.Actions[0]);
        string effect = best.IfClear is { Effect.Reduction: not null } clear ? $" ({EffectWords.Of(clear)})" : "";
        string others =
            group.Actions.Length == 1
                ? ""
                : $", or {Listing.Some([.. group.Actions.Skip(1).Select(names.Action)], most)}";
        string choice = $"{names.Action(best.Action)}{effect}{others}";
        return $"once you tell {group.ListedInWords} the likely choice is {choice}.{Why(best)}";
    }

    /// <summary>
    /// The same in brief: the likely choice with what it would do, and its reason where there is room.
    /// </summary>
    /// <param name="names">Where names come from.</param>
    /// <param name="area">The area.</param>
    /// <param name="group">The actions, the likeliest first.</param>
    /// <param name="isReasoned">Whether there is room for the reason.</param>
    public static string InBrief(Names names, AreaAdvice area, WaitingGroup group, bool isReasoned)
    {
        WaitingAction best = area.Waiting.First(one => one.Action == group.Actions[0]);
        string effect =
            isReasoned && best.IfClear is { Effect.Reduction: not null } clear ? $" ({EffectWords.Of(clear)})" : "";
        string others = isReasoned ? Others(names, group) : "";
        string why = isReasoned && Why(best) is { Length: > 0 } reason ? $".{reason}" : "";
        return $"once you tell {group.ListedInBrief}: likely {names.Action(best.Action)}{effect}{others}{why}";
    }

    private static string Others(Names names, WaitingGroup group) =>
        group.Actions.Length == 1
            ? ""
            : $", else {string.Join(" or ", group.Actions.Skip(1).Take(MostOthers).Select(names.Action))}";

    // A reason that is itself not sure is told as what it is.
    private static string Why(WaitingAction best) =>
        best.For is not [var reason, ..] ? ""
        : reason.IsCertain ? $" {Names.UnderItsName(reason.Said)}"
        : $" If so: {Names.UnderItsName(reason.Said)}";
}
