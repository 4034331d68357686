using WeedAdvisor.Planning.Nursery;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Nursery;

/// <summary>Where the first hour goes.</summary>
internal static class FirstHourBlocks
{
    // More bars than a page has room for say less; the table has all areas.
    private const int MostBars = 10;

    public static IEnumerable<Block> Of(NurseryPlan plan)
    {
        yield return Heading.Section("Where the first hour goes");
        SharedArea first = plan.Areas[0];
        yield return new Paragraph(
            first.First.Hours == 0
                ? Line.FromString("In no area does an hour save more than it costs.")
                : Line.Of(
                    $"Into {new Named(first.Area.Name)}. Against nobody going there before the year is over, "
                        + $"{NurseryWords.Hours(first.First.Hours)} in its busiest week, and less in the others, save "
                        + $"{Amounts.Dollars(first.First.SavedUsd)} a year."
                )
        ).At(2);
        if (plan.Areas.Length == 1)
            yield break;
        yield return new BarsDrawing(
            "What each of the first hours of the busiest week saves in a year, by area",
            [
                .. plan
                    .Areas.Take(MostBars)
                    .Select(area => new Bar(
                        area.Area.Name,
                        area.First.UsdAnHour,
                        area.First.Hours == 0
                            ? "hours save nothing"
                            : $"{Amounts.Dollars(area.First.UsdAnHour).Text} a year for each of the first "
                                + $"{NurseryWords.Hours(area.First.Hours).Text} of its busiest week"
                    )),
            ]
        ).At(2);
    }
}
