using System.Collections.Immutable;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Money;

/// <summary>
/// One way against today's, line by line: the partial budget with its working and what moves it most.
/// </summary>
public static class AgainstBlocks
{
    /// <summary>The blocks, a heading first.</summary>
    /// <param name="compared">The ways.</param>
    /// <param name="against">The one way.</param>
    public static IEnumerable<Block> Of(WaysCompared compared, WayAgainst against)
    {
        yield return Heading.Section($"{against.Way.Plan.Name} against today's way");
        yield return new Paragraph("US dollars a year for 1000 pots. Only what changes is listed.");
        PartialBudget budget = against.Budget;
        foreach ((string title, ImmutableArray<BudgetLine> lines) in Parts(budget))
        {
            yield return new Blank();
            yield return new Heading(
                HeadingLevel.Minor,
                Line.Of($"{title}: {Amounts.Dollars(lines.Sum(line => line.Usd))}")
            );
            yield return new ItemList([.. lines.Select(ItemOf)]).At(2);
        }

        yield return new Blank();
        yield return new Paragraph(Net(compared, budget));
        yield return new Paragraph(MoneyNotes.Wage(against, compared.Case.WageUsd));
        yield return new Paragraph(MoneyNotes.Payback(against));
        yield return Heading.Section("What moves the net change most");
        yield return new Paragraph("One input at a time, low to high; | is the net change reckoned with.");
        yield return new SwingDrawing("What moves the net change most", against.Sensitivity);
    }

    private static Item ItemOf(BudgetLine line) =>
        new(Item.Dash, Line.Of($"{line.Name}: {Amounts.Dollars(line.Usd)}"))
        {
            Below = [new Paragraph(line.Working).At(4)],
        };

    private static ImmutableArray<(string Title, ImmutableArray<BudgetLine> Lines)> Parts(PartialBudget budget) =>
        [
            ("Added returns", budget.AddedReturns),
            ("Reduced costs", budget.ReducedCosts),
            ("Added costs", budget.AddedCosts),
            ("Reduced returns", budget.ReducedReturns),
        ];

    private static Line Net(WaysCompared compared, PartialBudget budget) =>
        Line.Of(
            $"Net change: {Amounts.Dollars(budget.GainUsd)} - {Amounts.Dollars(budget.LossUsd)} = "
                + $"{Amounts.Dollars(budget.NetChangeUsd)} "
                + $"for 1000 pots, {Amounts.Dollars(MoneyColumns.Whole(compared, budget.NetChangeUsd))} for all "
                + $"{Figures.Plain(compared.Case.Pots)} pots."
        );
}
