using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports;

/// <summary>When records were last checked against their sources, and which of them are stale.</summary>
public static class Checks
{
    private const int YearsFresh = 1;

    /// <summary>Whether the check lies more than a year before the day; never where there was none.</summary>
    public static bool IsStale(DateOnly? check, DateOnly day) => check?.AddYears(YearsFresh) < day;

    /// <summary>The day of the check, and that it is long ago where it is; or that there was none.</summary>
    public static string Told(DateOnly? check, DateOnly today) =>
        check is not { } day ? "never: there is no source that was read for it"
        : IsStale(day, today) ? $"{Figures.Day(day)}, over a year ago"
        : Figures.Day(day);

    /// <summary>Every record and table to be checked, the longest ago first, then those that never were.</summary>
    public static IEnumerable<CheckedRecord> All(KnowledgeBase knowledge) =>
        knowledge
            .Treatments.Values.Select(one => new CheckedRecord("treatments", one.Id, one.Checked))
            .Concat(knowledge.Ingredients.Values.Select(one => new CheckedRecord("actives", one.Id, one.Checked)))
            .Concat(knowledge.Withdrawn.Values.Select(one => new CheckedRecord("withdrawn", one.Id, one.Checked)))
            .Concat(knowledge.RatingTables.Select(one => new CheckedRecord("ratings", one.Id, one.Checked)))
            .Concat(knowledge.ActiveLimits.Values.Select(one => new CheckedRecord("limits", one.Id, one.Checked)))
            .Concat(knowledge.Resistance.Values.Select(one => new CheckedRecord("resistance", one.Id, one.Checked)))
            .Concat(knowledge.Judgements.SelectMany(Law))
            .Concat(knowledge.Prices.Values.SelectMany(Price))
            .OrderBy(one => one.Checked ?? DateOnly.MaxValue)
            .ThenBy(one => one.Id, StringComparer.Ordinal);

    // That a topic is not held was never read anywhere, and says so.
    private static CheckedRecord[] Law(Judgement rule) =>
        rule.Law is { IsHeld: true } law ? [new CheckedRecord("law", rule.Id, law.Checked)] : [];

    // Prices that ship are invented and say so; those of a nursery may carry the day on which they held.
    private static CheckedRecord[] Price(Price price) =>
        price.Checked is { } day ? [new CheckedRecord("prices", price.Id, day)] : [];
}

/// <summary>A record or table that is to be checked against its sources.</summary>
/// <param name="Kind">What it is, such as <c>limits</c>.</param>
/// <param name="Id">Its id.</param>
/// <param name="Checked">The day of the last check; null when there never was one.</param>
public sealed record CheckedRecord(string Kind, string Id, DateOnly? Checked);
