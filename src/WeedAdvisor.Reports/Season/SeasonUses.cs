using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Season;

/// <summary>What goes on in a year, each application with its letter in the strip.</summary>
internal static class SeasonUses
{
    public static IEnumerable<Block> Of(YearPlan plan, Names names)
    {
        if (plan.Plan is not { } best)
            yield break;
        yield return Heading.Section("What goes on");
        if (best.Applications.IsEmpty)
            yield return new Paragraph(SeasonWords.Nothing(plan)).At(2);
        Strip strip = Strip.Of(plan);
        yield return new ItemList([
            .. best.Applications.Select(
                (use, i) => new Item($"{strip.Letters[i]}  ", LineOf(use, plan.Uses[i], names))
            ),
        ]).At(2);
    }

    private static Line LineOf(SeasonApplication use, PlannedUse planned, Names names) =>
        Line.Of(
            $"{SeasonWords.Days(planned)}  {new Named(names.Action(use.Name))} ({Groups(names, use.Name)}), "
                + $"{Amounts.Dollars(use.Cost)}"
        ) with
        {
            Action = use.Name,
        };

    private static string Groups(Names names, string treatment)
    {
        string groups = names.Treatment(treatment) is { } record ? SeasonWords.Groups(record, " + ") : "none";
        return groups.Contains('+', StringComparison.Ordinal) ? $"groups {groups}" : $"group {groups}";
    }
}
