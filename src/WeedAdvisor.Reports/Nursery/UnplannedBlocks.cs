using WeedAdvisor.Planning.Nursery;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Nursery;

/// <summary>The areas without a plan: why, and what is to be done there.</summary>
internal static class UnplannedBlocks
{
    public static IEnumerable<Block> Of(NurseryReport report)
    {
        if (report.Plan.Unplanned.IsEmpty)
            yield break;
        yield return Heading.Section("Not in the plan, and what is to be done there");
        yield return new ItemList([
            .. report.Plan.Unplanned.Select(one => new Item(
                Item.Dash,
                Line.Of($"{new Named(one.Area.Name)}. {string.Join(' ', one.Why)}{Doing(one)}")
            )
            {
                Below = [new Hanging(Line.FromString(Commands.Advise(report, one.Area))).At(2)],
            }),
        ]).At(2);
    }

    private static string Doing(UnplannedArea area) =>
        area.ToDo.IsEmpty ? "" : $" First there: {Listing.And(area.ToDo)}.";
}
