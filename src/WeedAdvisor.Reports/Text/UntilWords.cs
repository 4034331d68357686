using System.Globalization;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Text;

/// <summary>When something ends or begins, in words: the same ones in every medium.</summary>
public static class UntilWords
{
    /// <summary>
    /// From when an action becomes possible, such as <c>from 14 July</c>, <c>from 20:00 on 15 June</c> or
    /// <c>from 14 July, and when the flush has hardened</c>.
    /// </summary>
    /// <param name="until">What ends its bars.</param>
    /// <param name="today">The day of the visit, whose year need not be said; null to say every year.</param>
    public static string From(Until until, DateOnly? today = null)
    {
        string states = Listing.And(until.States);
        if (until.From is not { } from)
            return states.Length == 0 ? "nobody can say yet from when" : states;
        string moment = $"from {(until.HasHour ? Hour(from, today) : Day(DateOnly.FromDateTime(from), today))}";
        return states.Length == 0 ? moment : $"{moment}, and {states}";
    }

    /// <summary>
    /// Until when people keep out, such as <c>until 20:00 on 15 June</c>. The beginning of a day is the end of the one
    /// before it: "until 16 June" would leave open what holds on that day.
    /// </summary>
    /// <param name="keepOut">What keeps them out.</param>
    /// <param name="today">The day of the visit, whose year need not be said; null to say every year.</param>
    public static string KeepOut(KeepOut keepOut, DateOnly? today = null)
    {
        if (keepOut.Until.From is not { } from)
            return "until it is known what was put on, and when";
        return from.TimeOfDay == TimeSpan.Zero
            ? $"until 24:00 on {Day(DateOnly.FromDateTime(from).AddDays(-1), today)}"
            : $"until {Hour(from, today)}";
    }

    private static string Hour(DateTime moment, DateOnly? today) =>
        $"{moment.ToString("HH:mm", CultureInfo.InvariantCulture)} on {Day(DateOnly.FromDateTime(moment), today)}";

    /// <summary>A day, without its year where that is the year of the visit.</summary>
    /// <param name="day">The day.</param>
    /// <param name="today">The day of the visit; null to say every year.</param>
    public static string Day(DateOnly day, DateOnly? today) =>
        day.Year == today?.Year ? day.ToString("d MMMM", CultureInfo.InvariantCulture) : Figures.LongDay(day);
}
