using System.Collections.Immutable;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Money;

/// <summary>One way against today's, line by line, as plain text.</summary>
internal static class AgainstText
{
    public static void Write(Page page, WaysCompared compared, WayAgainst against)
    {
        page.Heading($"{against.Way.Plan.Name} against today's way");
        page.Write(0, "US dollars a year for 1000 pots. Only what changes is listed.");
        PartialBudget budget = against.Budget;
        foreach ((string title, ImmutableArray<BudgetLine> lines) in Parts(budget))
        {
            page.Gap();
            page.Write(0, $"{title}: {Figures.Dollars(lines.Sum(line => line.Usd))}");
            foreach (BudgetLine line in lines)
            {
                page.Write(2, "- ", $"{line.Name}: {Figures.Dollars(line.Usd)}");
                page.Write(6, line.Working);
            }
        }

        page.Gap();
        page.Write(0, NetLine(compared, budget));
        page.Write(0, MoneyNotes.Wage(against, compared.Case.WageUsd));
        page.Write(0, MoneyNotes.Payback(against));
        page.Heading("What moves the net change most");
        page.Write(0, "One input at a time, low to high; | is the net change reckoned with.");
        SwingBars.Write(page, against.Sensitivity);
    }

    /// <summary>The four parts of a partial budget with their titles, in the order of the form.</summary>
    public static ImmutableArray<(string Title, ImmutableArray<BudgetLine> Lines)> Parts(PartialBudget budget) =>
    [
        ("Added returns", budget.AddedReturns),
        ("Reduced costs", budget.ReducedCosts),
        ("Added costs", budget.AddedCosts),
        ("Reduced returns", budget.ReducedReturns),
    ];

    /// <summary>The net change in a sentence.</summary>
    public static string NetLine(WaysCompared compared, PartialBudget budget) =>
        $"Net change: {Figures.Dollars(budget.GainUsd)} - {Figures.Dollars(budget.LossUsd)} = {SwingBars.Signed(budget.NetChangeUsd)} "
        + $"for 1000 pots, {SwingBars.Signed(MoneyColumns.Whole(compared, budget.NetChangeUsd))} for all {Figures.Plain(compared.Case.Pots)} pots.";
}
