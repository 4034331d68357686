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
                    $"Into {new Named(first.Area.Name)}. Set against nobody going there before the year is over, its "
                        + $"first {NurseryWords.Hours(first.First.Hours)} a week save "
                        + $"{Amounts.Dollars(first.First.SavedUsd)} a year: "
                        + $"{Amounts.Dollars(first.First.UsdAnHour)} an hour."
                )
        ).At(2);
        if (plan.Areas.Length == 1)
            yield break;
        yield return new BarsDrawing(
            "What each of the first hours a week saves in a year, by area",
            [
                .. plan
                    .Areas.Take(MostBars)
                    .Select(area => new Bar(
                        area.Area.Name,
                        area.First.UsdAnHour,
                        area.First.Hours == 0
                            ? "hours save nothing"
                            : $"{Amounts.Dollars(area.First.UsdAnHour).Text} an hour, for the first "
                                + NurseryWords.Hours(area.First.Hours).Text
                    )),
            ]
        ).At(2);
    }
}
