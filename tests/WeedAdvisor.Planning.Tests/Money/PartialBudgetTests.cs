using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Tests.Money;

public class PartialBudgetTests
{
    private static readonly Gen<ImmutableArray<CostItem>> s_way = Gen.Select(
            Gen.Int[0, 5],
            Gen.Enum<CostKind>(),
            Gen.Int[0, 100_000],
            Gen.Int[0, 500]
        )
        .Select((id, kind, cents, hours) => Item($"{kind}-{id}", kind, cents / 100m, hours))
        .Array[0, 8]
        .Select(items => items.DistinctBy(item => item.Id).ToImmutableArray());

    [Fact]
    public void What_a_change_brings_is_what_the_way_back_takes() =>
        Gen.Select(s_way, s_way)
            .Sample(
                (one, other) =>
                {
                    PartialBudget there = PartialBudget.Between(one, other);
                    PartialBudget back = PartialBudget.Between(other, one);
                    Assert.Equal(there.NetChangeUsd, -back.NetChangeUsd);
                    Assert.Equal(there.GainUsd, back.LossUsd);
                }
            );

    [Fact]
    public void The_net_change_is_the_difference_of_the_two_costs() =>
        Gen.Select(s_way, s_way)
            .Sample(
                (one, other) =>
                    Assert.Equal(
                        one.Sum(item => item.Usd) - other.Sum(item => item.Usd),
                        PartialBudget.Between(one, other).NetChangeUsd
                    )
            );

    [Fact]
    public void Two_changes_in_a_row_add_up() =>
        Gen.Select(s_way, s_way, s_way)
            .Sample(
                (first, second, third) =>
                    Assert.Equal(
                        PartialBudget.Between(first, third).NetChangeUsd,
                        PartialBudget.Between(first, second).NetChangeUsd
                            + PartialBudget.Between(second, third).NetChangeUsd
                    )
            );

    [Fact]
    public void No_change_has_no_lines() =>
        s_way.Sample(way =>
        {
            PartialBudget budget = PartialBudget.Between(way, way);
            Assert.Equal(0, budget.GainUsd);
            Assert.Equal(0, budget.LossUsd);
        });

    // The form (csu-3761) has four places: each kind of change stands in its own.
    [Fact]
    public void Each_change_stands_in_its_place()
    {
        PartialBudget budget = PartialBudget.Between(
            [
                Item("weeding", CostKind.Labour, 100),
                Item("loss", CostKind.LostReturn, 30),
                Item("sale", CostKind.LostReturn, 0),
            ],
            [
                Item("weeding", CostKind.Labour, 40),
                Item("loss", CostKind.LostReturn, 10),
                Item("sale", CostKind.LostReturn, 5),
                Item("bark", CostKind.Material, 25),
            ]
        );
        Assert.Equal(("loss", 20m), One(budget.AddedReturns));
        Assert.Equal(("weeding", 60m), One(budget.ReducedCosts));
        Assert.Equal(("bark", 25m), One(budget.AddedCosts));
        Assert.Equal(("sale", 5m), One(budget.ReducedReturns));
        Assert.Equal(50m, budget.NetChangeUsd);
        Assert.Equal("before: 100; after: 40", budget.ReducedCosts[0].Working);
    }

    [Fact]
    public void A_thing_that_stands_twice_is_refused() =>
        Assert.Throws<ArgumentException>(() =>
            PartialBudget.Between([Item("a", CostKind.Labour, 1), Item("a", CostKind.Labour, 2)], [])
        );

    private static (string, decimal) One(ImmutableArray<BudgetLine> lines) => (Assert.Single(lines).Name, lines[0].Usd);

    private static CostItem Item(string id, CostKind kind, decimal usd, decimal hours = 0) =>
        new(id, id, kind, usd, hours, FormattableString.Invariant($"{usd:0.##}"));
}
