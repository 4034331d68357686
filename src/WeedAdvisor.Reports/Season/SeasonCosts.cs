using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
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
        if (plan.Plan is not { } best)
            yield break;
        yield return Heading.Section("What it costs");
        yield return new Table(
            [new Column("", DollarColumns)],
            [
                RowOf("preventives", best.ApplicationCost),
                RowOf("hands for what gets through", best.EscapeCost),
                RowOf("together", best.Total),
                RowOf("hands alone, nothing put on", plan.HandsOnlyUsd),
            ]
        )
        {
            HeadWidth = LabelColumns,
            Indent = 2,
        };
        yield return new Paragraph(SeasonWords.Proof(plan, best)).At(2);
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
        yield return Heading.Section(plan.NextBestIsProven ? "The next best, proven" : "The next best found");
        yield return ItemList
            .Dashes(plan.NextBest.Zip(plan.UsesOfNextBest, (next, uses) => Next(next, uses, best, names)))
            .At(2);
    }

    private static Row RowOf(string label, decimal usd) => new(label, [Amounts.Dollars(usd)]);

    private static Line Next(SeasonPlan next, ImmutableArray<PlannedUse> uses, SeasonPlan best, Names names) =>
        Line.Of(
            $"{Amounts.Dollars(next.Total)} (+{Amounts.Dollars(next.Total - best.Total)}): "
                + $"{SeasonWords.Brief(uses, names.Action)}"
        );

    private static string MonthName(MonthPrice month) =>
        new DateOnly(month.Year, month.Month, 1).ToString("MMMM yyyy", CultureInfo.InvariantCulture);

    private static Line Price(decimal usd, decimal percent) =>
        usd == 0 ? "costs nothing" : Line.Of($"costs {Amounts.Dollars(usd)} ({new Amount(percent, "%", "0.#")})");
}
