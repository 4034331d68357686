using System.Globalization;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Season;

/// <summary>What a year costs, what the rules cost in it, and the next best years.</summary>
internal static class SeasonCosts
{
    private const int LabelColumns = 34,
        DollarColumns = 12;

    public static IEnumerable<Block> Of(YearPlan plan, Names names)
    {
        if (plan is not { Plan: { } best, Way: { } way })
            yield break;
        yield return Heading.Section("What it costs");
        yield return new Table(
            [new Column("", DollarColumns)],
            [
                RowOf("preventives", best.ApplicationCost),
                .. way.MeasuresUsd > best.ApplicationCost
                    ? [RowOf("mulch, tools that are bought", way.MeasuresUsd - best.ApplicationCost)]
                    : (Row[])[],
                RowOf("weeding what gets through", way.WeedingUsd),
                RowOf("plants lost to weeds", way.LostUsd),
                RowOf("work left for next year", way.Of(CostKind.NextYear)),
                RowOf("together", way.Usd),
                RowOf("the same, nothing put on", plan.HandsOnlyUsd),
            ]
        )
        {
            HeadWidth = LabelColumns,
            Indent = 2,
        };
        yield return new Paragraph(SeasonWords.Proof(plan)).At(2);
        yield return ItemList
            .Dashes([
                .. plan.RulePrices.Select(price =>
                    Line.Of($"{price.Rule.In(plan.Case.Problem)}: {Price(price.Price, price.Percent)}")
                ),
                .. plan.MonthPrices.Select(month =>
                    Line.Of(
                        $"not going out in {MonthName(month)}: "
                            + $"{(month.Usd is { } usd ? Price(usd, month.Percent ?? 0) : "no plan is left")}"
                    )
                ),
            ])
            .At(2);
        if (plan.NextBest.IsEmpty)
            yield break;
        yield return Heading.Section("The next best found");
        yield return ItemList.Dashes(plan.NextBest.Select(next => Next(next, way, names))).At(2);
    }

    private static Row RowOf(string label, decimal usd) => new(label, [Amounts.Dollars(usd)]);

    private static Line Next(NextBest next, Way best, Names names) =>
        Line.Of(
            $"{Amounts.Dollars(next.Way.Usd)} (+{Amounts.Dollars(Math.Max(0, next.Way.Usd - best.Usd))}): "
                + $"{SeasonWords.Brief(next.Uses, names.Action)}"
        );

    private static string MonthName(MonthPrice month) =>
        new DateOnly(month.Year, month.Month, 1).ToString("MMMM yyyy", CultureInfo.InvariantCulture);

    private static Line Price(decimal usd, decimal percent) =>
        usd == 0 ? "costs nothing" : Line.Of($"costs {Amounts.Dollars(usd)} ({new Amount(percent, "%", "0.#")})");
}
