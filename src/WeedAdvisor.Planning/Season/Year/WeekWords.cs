using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge;

namespace WeedAdvisor.Planning.Season.Year;

/// <summary>
/// Reads which weeks of a plan are meant: days (<c>2026-07-06</c>), months (<c>2026-07</c>, or <c>july</c> for the one
/// in the plan) and spans of two days (<c>2026-12-20..2027-01-04</c>), set apart by commas.
/// </summary>
public static class WeekWords
{
    private const string Expected =
        "days (2026-07-06), months (2026-07 or july) or spans (2026-12-20..2027-01-04), set apart by commas";

    /// <summary>The weeks that any of the days falls in, or what is wrong with the text.</summary>
    public static (ImmutableSortedSet<int>? Weeks, string? Problem) Read(string text, SeasonYear year)
    {
        var weeks = ImmutableSortedSet.CreateBuilder<int>();
        string[] parts = text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length == 0)
            return (null, $"names no week; write {Expected}");
        foreach (string part in parts)
        {
            if (Days(part, year) is not { } days)
                return (null, $"cannot read '{part}'; write {Expected}");
            if (days.To < days.From)
                return (null, $"has the span '{part}' with the later day first");
            int from = Math.Max(0, year.WeekOf(days.From)),
                to = Math.Min(SeasonYear.Weeks - 1, year.WeekOf(days.To));
            if (from > to)
            {
                DateOnly last = year.DayOf(SeasonYear.Weeks).AddDays(-1);
                string plan = FormattableString.Invariant($"({year.From:yyyy-MM-dd} to {last:yyyy-MM-dd})");
                return (null, $"has '{part}', which lies outside the plan {plan}");
            }

            weeks.UnionWith(Enumerable.Range(from, to - from + 1));
        }

        return (weeks.ToImmutable(), null);
    }

    private static (DateOnly From, DateOnly To)? Days(string part, SeasonYear year)
    {
        string[] ends = part.Split("..", StringSplitOptions.TrimEntries);
        if (ends.Length == 2)
            return Day(ends[0]) is { } from && Day(ends[1]) is { } to ? (from, to) : null;
        if (Day(part) is { } day)
            return (day, day);
        return Month(part, year) is { } first ? (first, first.AddMonths(1).AddDays(-1)) : null;
    }

    private static DateOnly? Day(string text) => CalendarDay.TryRead(text, out DateOnly day) ? day : null;

    private static DateOnly? Month(string text, SeasonYear year)
    {
        if (CalendarDay.TryRead(text + "-01", out DateOnly first))
            return first;
        int month =
            Array.FindIndex(CultureInfo.InvariantCulture.DateTimeFormat.MonthNames, name =>
                name.Length > 0 && name.Equals(text, StringComparison.OrdinalIgnoreCase)
            ) + 1;
        if (month == 0)
            return null;
        // The month in which the plan begins is meant as it begins, not the one at its end.
        DateOnly start = new(year.From.Year, year.From.Month, 1);
        return Enumerable.Range(0, 12).Select(start.AddMonths).First(day => day.Month == month);
    }
}
