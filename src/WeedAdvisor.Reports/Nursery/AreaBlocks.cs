using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Planning.Nursery;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Plan;
using WeedAdvisor.Reports.Season;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Nursery;

/// <summary>Each area's plan in a few lines, with the command that shows it whole.</summary>
internal static class AreaBlocks
{
    public static IEnumerable<Block> Of(NurseryReport report)
    {
        var names = new Names(report.Plan.Knowledge);
        return report.Plan.Areas.SelectMany(area => OfArea(report, area, names));
    }

    private static IEnumerable<Block> OfArea(NurseryReport report, SharedArea area, Names names)
    {
        Way way = area.Plan.Way;
        YearCase year = area.Best.Case.Year;
        string assumed = year.Block.Pots.From == Origin.Assumed ? " (assumed)" : "";
        yield return new Heading(HeadingLevel.Area, new Named(area.Area.Name));
        yield return new ItemList([
            new Item(
                Item.Dash,
                Line.Of(
                    $"{new Amount(year.Pots, "pots", "#,0")}{assumed}: weed {RoundsWords.Of(year, way)}; "
                        + $"{NurseryWords.Hours(way.Hours * year.Pots / 1000)} of work in the year."
                )
            ),
            .. area.Plan.Choice.Measures.Select(measure => new Item(
                Item.Dash,
                Line.Of($"{new Named(measure.Name)}") with
                {
                    Action = measure.Id,
                }
            )),
            .. area.Plan.Uses.Select(use => new Item(
                Item.Dash,
                Line.Of($"{SeasonWords.Days(use)}  {new Named(names.Action(use.Treatment))}") with
                {
                    Action = use.Treatment,
                }
            )),
            .. PlanSpending.Missing(year, area.Plan) is { } missing ? [new Item(Item.Dash, missing)] : (Item[])[],
            .. area.Mowing is { } mowing ? [new Item(Item.Dash, PlanSource.Of(year, mowing, names))] : (Item[])[],
            .. area.Best.Case.NoSeason.Select(why => new Item(
                Item.Dash,
                Line.FromString($"No preventive is in it: {Without(area, why)}")
            )),
        ]).At(2);
        yield return new Hanging(Line.FromString(Commands.Plan(report, area))).At(2);
    }

    private static string Without(SharedArea area, string why) =>
        why.StartsWith(area.Area.Name + ": ", StringComparison.Ordinal) ? why[(area.Area.Name.Length + 2)..] : why;
}
