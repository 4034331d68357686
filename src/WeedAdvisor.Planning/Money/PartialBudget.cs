using System.Collections.Immutable;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Money;

/// <summary>One line of a partial budget.</summary>
/// <param name="Name">What changes.</param>
/// <param name="Usd">By how many US dollars, more than 0.</param>
/// <param name="Working">How the amount comes about.</param>
public sealed record BudgetLine(string Name, decimal Usd, string Working);

/// <summary>
/// What a change brings and takes, and nothing that stays as it is: added returns and reduced costs on one side, added
/// costs and reduced returns on the other. It gives the change in profit, not the profit. Form: csu-3761.
/// </summary>
/// <param name="AddedReturns">Income that comes with the change.</param>
/// <param name="ReducedCosts">Costs that fall away with it.</param>
/// <param name="AddedCosts">Costs that come with it.</param>
/// <param name="ReducedReturns">Income that is lost with it.</param>
public sealed record PartialBudget(
    ImmutableArray<BudgetLine> AddedReturns,
    ImmutableArray<BudgetLine> ReducedCosts,
    ImmutableArray<BudgetLine> AddedCosts,
    ImmutableArray<BudgetLine> ReducedReturns
)
{
    /// <summary>Added returns and reduced costs, US dollars.</summary>
    public decimal GainUsd => Sum(AddedReturns) + Sum(ReducedCosts);

    /// <summary>Added costs and reduced returns, US dollars.</summary>
    public decimal LossUsd => Sum(AddedCosts) + Sum(ReducedReturns);

    /// <summary>Gain less loss, US dollars: above 0 the change pays.</summary>
    public decimal NetChangeUsd => GainUsd - LossUsd;

    /// <summary>
    /// The budget of a change from one way to another; items with the same id are set against each other.
    /// </summary>
    /// <param name="from">What the way left costs; ids are unique.</param>
    /// <param name="to">What the way taken up costs; ids are unique.</param>
    /// <exception cref="ArgumentException">When an id stands twice in one way.</exception>
    public static PartialBudget Between(IEnumerable<CostItem> from, IEnumerable<CostItem> to)
    {
        CostItem[] before = [.. from];
        var left = before.ToDictionary(item => item.Id, StringComparer.Ordinal);
        CostItem[] after = [.. to];
        var taken = after.ToDictionary(item => item.Id, StringComparer.Ordinal);
        (CostItem? Old, CostItem? New)[] pairs =
        [
            .. before.Select(item => ((CostItem?)item, taken.GetValueOrDefault(item.Id))),
            .. after.Where(item => !left.ContainsKey(item.Id)).Select(item => ((CostItem?)null, (CostItem?)item)),
        ];
        return new PartialBudget(
            AddedReturns: Lines(pairs, isReturn: true, sign: -1),
            ReducedCosts: Lines(pairs, isReturn: false, sign: -1),
            AddedCosts: Lines(pairs, isReturn: false, sign: 1),
            ReducedReturns: Lines(pairs, isReturn: true, sign: 1)
        );
    }

    private static ImmutableArray<BudgetLine> Lines((CostItem? Old, CostItem? New)[] pairs, bool isReturn, int sign) =>
        [
            .. pairs
                .Where(pair => ((pair.New ?? pair.Old)!.Kind == CostKind.LostReturn) == isReturn)
                .Select(pair => (pair, Change: sign * ((pair.New?.Usd ?? 0) - (pair.Old?.Usd ?? 0))))
                .Where(line => line.Change > 0)
                .Select(line => new BudgetLine(
                    (line.pair.New ?? line.pair.Old)!.Name,
                    line.Change,
                    Working(line.pair)
                )),
        ];

    private static string Working((CostItem? Old, CostItem? New) pair) =>
        pair switch
        {
            ({ } old, { } now) => $"before: {old.Working}; after: {now.Working}",
            ({ } old, null) => old.Working,
            (_, var now) => now!.Working,
        };

    private static decimal Sum(ImmutableArray<BudgetLine> lines) => lines.Sum(line => line.Usd);
}
