using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Limits;

/// <summary>
/// Counts the days since the active went on last, whatever product brought it: the longest interval counts that the active,
/// the product to come or the product that was used asks for.
/// </summary>
internal static class IntervalCheck
{
    /// <summary>The intervals that still hold, or may.</summary>
    public static IEnumerable<LimitVerdict> Of(
        Treatment treatment, IReadOnlyCollection<ActiveLimit> limits, UsesOfActive uses, KnowledgeBase knowledge)
    {
        decimal? own = Longest(limits.Select(limit => limit.IntervalDays).Append(treatment.RepeatAfterDays));
        decimal? anywhere = Longest(knowledge.Treatments.Values
            .Where(one => one.Actives.Any(active => active.Name == uses.Active))
            .Select(one => one.RepeatAfterDays));
        foreach (UseOfActive use in uses.Uses)
        {
            decimal? needed = Longest([own, use.Product.Record?.RepeatAfterDays]);
            string text = $"{Capital(use.Product.Name)} went on {When(use)}, and {uses.Active} needs {Days(needed)} between two uses";
            if (use.Told.Date is not { } day)
            {
                yield return new LimitVerdict(LimitKind.Interval, uses.Active, Truth.NotKnown, [Need.Question("past")], null, text);
                continue;
            }

            int since = uses.Day.DayNumber - day.DayNumber;
            if (use.IsSure && needed is { } days && since < days)
            {
                yield return new LimitVerdict(
                    LimitKind.Interval, uses.Active, Truth.Yes, [], day.AddDays((int)Math.Ceiling(days)), text);
            }
            else if (!use.IsSure && since < (Longest([needed, anywhere]) ?? LimitCheck.DaysOfUnknownInterval))
            {
                yield return new LimitVerdict(LimitKind.Interval, uses.Active, Truth.NotKnown, [Need.Question("past")], null, text);
            }
            else if (use.IsSure && use.Product.Record is null && since < anywhere)
            {
                yield return new LimitVerdict(LimitKind.Interval, uses.Active, Truth.NotKnown, [Need.Question("past")], null, text);
            }
            else if (use.IsSure && needed is null && since < LimitCheck.DaysOfUnknownInterval)
            {
                yield return LimitCheck.AskTheLabel(treatment, uses, "repeat-after-days", LimitKind.Interval, text);
            }
        }
    }

    private static decimal? Longest(IEnumerable<decimal?> days) => days.Max();

    private static string Days(decimal? days) =>
        days is { } known ? $"{known.ToString("0.##", CultureInfo.InvariantCulture)} days" : "the days that only the label can tell";

    private static string When(UseOfActive use) => use.Told.Date is { } day
        ? $"on {day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}"
        : "on a day that is not known";

    private static string Capital(string name) => $"{char.ToUpperInvariant(name[0])}{name[1..]}";
}
