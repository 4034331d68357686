using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Plan;

/// <summary>What a plan costs and saves, for all pots.</summary>
internal static class PlanCosts
{
    private const int LabelColumns = 34,
        DollarColumns = 12;
    private const decimal Thousand = 1000;

    public static IEnumerable<Block> Of(AreaPlan plan, PlannedWay best)
    {
        Way way = best.Way,
            today = plan.Today;
        yield return Heading.Section("What it costs");
        yield return new Table(
            [
                new Column("the plan", DollarColumns) { Brief = ["the plan"] },
                new Column("today's way", DollarColumns) { Brief = ["today's way"] },
            ],
            [
                RowOf("what goes on and is laid", way.MeasuresUsd, today.MeasuresUsd),
                RowOf("weeding", way.WeedingUsd, today.WeedingUsd),
                RowOf("plants lost to weeds", way.LostUsd, today.LostUsd),
                RowOf("work left for next year", way.Of(CostKind.NextYear), today.Of(CostKind.NextYear)),
                RowOf("together", way.Usd, today.Usd),
                new Row(
                    "hours of work",
                    [
                        Amounts.Whole((double)(way.Hours * plan.Case.Year.Pots / Thousand)),
                        Amounts.Whole((double)(today.Hours * plan.Case.Year.Pots / Thousand)),
                    ]
                ),
                new Row(
                    "spent in the year",
                    [PlanSpending.Of(plan.Case.Year, way), PlanSpending.Of(plan.Case.Year, today)]
                ),
            ]
        )
        {
            HeadWidth = LabelColumns,
            Indent = 2,
        };
        yield return new Paragraph(
            Line.FromString($"Spent are {PlanSpending.Spent}: the figure that --budget limits.")
        ).At(2);
        decimal saved = today.Usd - way.Usd;
        yield return new Paragraph(
            saved >= 0
                ? Line.Of($"{today.Plan.Name}. The plan saves {All(plan, saved)} a year against it.")
                : Line.Of(
                    $"{today.Plan.Name}. It costs {All(plan, -saved)} less, but is not among the plans: a use in it is "
                        + $"not allowed now, a wish bars it, or its rounds are of another length."
                )
        ).At(2);
        yield return new Paragraph(Proof(plan)).At(2);

        Row RowOf(string label, decimal usd, decimal usdToday) => new(label, [All(plan, usd), All(plan, usdToday)]);
    }

    /// <summary>An amount for 1000 pots, for all pots.</summary>
    public static Amount All(AreaPlan plan, decimal usd) => Amounts.Dollars(usd * plan.Case.Year.Pots / Thousand);

    private static Line Proof(AreaPlan plan) =>
        plan.IsProven
            ? Line.Of(
                $"Proven: of {Amounts.Whole(plan.Looked)} rounds and measures, with any preventives that the rules "
                    + $"allow, none costs less than {All(plan, plan.LeastUsd)}, which is within "
                    + $"{new Amount(YearPlan.ProvenPercent, "%", "0")}."
            )
            : Line.Of(
                $"The best found of {Amounts.Whole(plan.Looked)} rounds and measures"
                    + $"{(plan.IsCutShort ? ", stopped early" : "")}. It is proven only that none costs less than "
                    + $"{All(plan, plan.LeastUsd)}: {new Amount(plan.GapPercent ?? 0, "%", "0")} below."
            );
}
