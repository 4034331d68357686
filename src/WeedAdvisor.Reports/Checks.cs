using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports;

/// <summary>When records were last checked against their sources, and which of them are stale.</summary>
public static class Checks
{
    private const int YearsFresh = 1;

    /// <summary>Whether the day of the check lies more than a year before the day.</summary>
    public static bool IsStale(DateOnly check, DateOnly day) => check.AddYears(YearsFresh) < day;

    /// <summary>The day of the check, and that it is long ago where it is.</summary>
    public static string Told(DateOnly check, DateOnly today) =>
        $"{Figures.Day(check)}{(IsStale(check, today) ? ", over a year ago" : "")}";

    /// <summary>Every record and table that carries the day of its check, oldest first.</summary>
    public static IEnumerable<(string Id, DateOnly Checked)> All(KnowledgeBase knowledge) =>
        knowledge
            .Treatments.Values.Select(one => (one.Id, one.Checked))
            .Concat(knowledge.Ingredients.Values.Select(one => (one.Id, one.Checked)))
            .Concat(knowledge.Withdrawn.Values.Select(one => (one.Id, one.Checked)))
            .Concat(knowledge.RatingTables.Select(one => (one.Id, one.Checked)))
            .Concat(knowledge.ActiveLimits.Values.Select(one => (one.Id, one.Checked)))
            .Concat(knowledge.Resistance.Values.Select(one => (one.Id, one.Checked)))
            .Concat(
                knowledge
                    .Prices.Values.Where(one => one.Checked is not null)
                    .Select(one => (one.Id, one.Checked!.Value))
            )
            .OrderBy(one => one.Item2)
            .ThenBy(one => one.Id, StringComparer.Ordinal);
}
