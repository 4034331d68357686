using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Season.Search;

/// <summary>What one wish or rule costs: the best plan with it against the best plan without it.</summary>
/// <param name="Rule">The wish or rule.</param>
/// <param name="Without">The best plan without it.</param>
/// <param name="Price">By how much the plan without it is cheaper, in money; at least 0 when both are proven.</param>
/// <param name="Percent">The price as a percentage of the plan with it; 0 when that costs nothing.</param>
/// <param name="Proven">Whether both plans are proven.</param>
public sealed record RulePrice(SeasonWish Rule, SeasonPlan Without, decimal Price, decimal Percent, bool Proven);

/// <summary>What each wish and rule of a problem costs, found by solving again without it.</summary>
/// <param name="Prices">The prices, in the order of the wishes.</param>
public sealed record RulePrices(ImmutableArray<RulePrice> Prices)
{
    private const decimal Hundred = 100m;

    /// <summary>Solves once more for each wish and rule.</summary>
    /// <param name="search">The search that found the best plan.</param>
    /// <param name="best">The best plan with all rules.</param>
    /// <param name="effort">How far each search may go.</param>
    /// <param name="stop">Stops early.</param>
    public static RulePrices Of(
        SeasonSearch search,
        SeasonPlan best,
        SeasonEffort? effort = null,
        CancellationToken stop = default
    ) =>
        new([
            .. SeasonWish
                .AllOf(search.Problem)
                .Select(rule =>
                {
                    SeasonSearch freer = SeasonSearch.Prepare(SeasonWish.Lift(search.Problem, [rule]), near: search);

                    // A plan under all rules is a plan under fewer, so there is always one.
                    SeasonPlan without = freer.Solve(best, effort, stop).Plan ?? best;
                    decimal price = best.Total - without.Total;
                    decimal percent = best.Total == 0 ? 0 : price / best.Total * Hundred;
                    return new RulePrice(rule, without, price, percent, best.Proven && without.Proven);
                }),
        ]);
}
