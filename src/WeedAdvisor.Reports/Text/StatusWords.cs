using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Reports.Text;

/// <summary>
/// How an action stands, in words: one of seven statuses and what belongs to it, the same in every medium.
/// </summary>
public static class StatusWords
{
    /// <summary>
    /// How an action stands in an area, such as <c>not yet (from 14 July)</c>, <c>waits (ask: place and stock)</c> or
    /// <c>never</c>.
    /// </summary>
    /// <param name="area">The advice.</param>
    /// <param name="action">The action's id.</param>
    /// <param name="need">What has to be known, in few words.</param>
    /// <param name="today">The day of the visit, whose year need not be said; null to say every year.</param>
    public static string Of(AreaAdvice area, string action, Func<Need, string> need, DateOnly? today = null)
    {
        if (area.Clear.FirstOrDefault(one => one.Action == action) is { } clear)
            return Of(clear, need);
        if (area.Barred.FirstOrDefault(one => one.Action == action) is { } barred)
            return Of(barred, today);
        if (area.Waiting.FirstOrDefault(one => one.Action == action) is { } waiting)
            return With(ActionStatus.Waits, Ask(waiting.Needs, need));
        bool isOutweighed = area.NotAdvised.Any(one => one.Action == action && !one.For.IsEmpty);
        return With(
            ActionStatus.NotAdvised,
            isOutweighed ? "what speaks against it weighs more" : "nothing speaks for it here"
        );
    }

    /// <summary>How a clear action stands.</summary>
    public static string Of(ClearAction action, Func<Need, string> need) =>
        With(action.Status, action.Status == ActionStatus.Clear ? "" : Ask(action.Unless, need));

    /// <summary>How a barred action stands.</summary>
    public static string Of(BarredAction action, DateOnly? today = null) => With(action.Status, EndOf(action, today));

    /// <summary>
    /// What ends a bar or goes round it: the day, hour or state, or the other way; nothing for never.
    /// </summary>
    public static string EndOf(BarredAction action, DateOnly? today = null) =>
        action switch
        {
            { Until: { } until } => UntilWords.From(until, today),
            { OtherWays.IsEmpty: false } => string.Join("; or ", action.OtherWays),
            _ => "",
        };

    /// <summary>The word for how hard a bar is.</summary>
    public static string Of(Severity severity) => severity == Severity.Prohibited ? "prohibited" : "unsuitable";

    /// <summary>
    /// The doubt that could still outweigh a clear action, with the questions that settle it; null when it is clear.
    /// </summary>
    public static string? Unless(ClearAction action, Func<Need, string> need)
    {
        if (action.Status == ActionStatus.Clear)
            return null;
        string? doubt = DoubtOf(action)?.Text;
        return $"{Figures.Sentence(doubt ?? "")} ({Ask(action.Unless, need)})".TrimStart();
    }

    /// <summary>What follows the name of an action that a doubt could outweigh, without ids; else nothing.</summary>
    internal static string UnlessInWords(ClearAction action) =>
        action.Status == ActionStatus.Clear ? ""
        : DoubtOf(action) is { } doubt ? $", unless: {Names.UnderItsName(doubt)}"
        : ", unless an answer speaks against it";

    /// <summary>The doubt that could still outweigh a clear action: the strongest; null when there is none.</summary>
    public static Said? DoubtOf(ClearAction action) =>
        action.Doubts.OrderByDescending(reason => reason.Certainty).FirstOrDefault()?.Said;

    /// <summary>The questions that settle whether it does.</summary>
    public static string AskOf(ClearAction action, Func<Need, string> need) => Ask(action.Unless, need);

    private static string With(ActionStatus status, string more) =>
        more.Length == 0 ? ActionStatuses.Text(status) : $"{ActionStatuses.Text(status)} ({more})";

    private static string Ask(ImmutableArray<Need> needs, Func<Need, string> need) =>
        $"ask: {Listing.And([.. needs.Select(need).Distinct(StringComparer.Ordinal)])}";
}
