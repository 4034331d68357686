using CsCheck;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Tests.Money;

public class BreakEvenTests
{
    private static readonly Gen<CostAtWage> s_way = Gen.Select(Gen.Int[0, 100_000], Gen.Int[0, 50_000])
        .Select((cents, hundredths) => new CostAtWage(cents / 100m, hundredths / 100m));

    [Fact]
    public void At_the_wage_both_ways_cost_the_same_and_beside_it_the_named_one_less() =>
        Gen.Select(s_way, s_way)
            .Sample(
                (first, second) =>
                {
                    switch (BreakEvens.Wage(first, second))
                    {
                        case BreakEven.At at:
                            Assert.Equal(first.TotalUsd(at.Value), second.TotalUsd(at.Value), 9);
                            Assert.Equal(
                                at.FirstIsCheaperAbove,
                                first.TotalUsd(at.Value * 2) < second.TotalUsd(at.Value * 2)
                            );
                            Assert.Equal(
                                at.FirstIsCheaperAbove,
                                first.TotalUsd(at.Value / 2) > second.TotalUsd(at.Value / 2)
                            );
                            break;
                        case BreakEven.Never never:
                            Assert.All([0.01m, 1m, 18m, 1_000_000m], wage =>
                                Assert.Equal(never.FirstIsCheaper, first.TotalUsd(wage) < second.TotalUsd(wage))
                            );
                            break;
                        default:
                            Assert.Equal(first, second);
                            break;
                    }
                }
            );

    [Fact]
    public void The_order_of_the_ways_does_not_move_the_wage() =>
        Gen.Select(s_way, s_way)
            .Sample(
                (first, second) =>
                {
                    BreakEven there = BreakEvens.Wage(first, second);
                    BreakEven back = BreakEvens.Wage(second, first);
                    Assert.Equal(there.GetType(), back.GetType());
                    if (there is BreakEven.At one && back is BreakEven.At other)
                        Assert.Equal((one.Value, one.FirstIsCheaperAbove), (other.Value, !other.FirstIsCheaperAbove));
                }
            );

    [Fact]
    public void A_way_costs_no_less_at_a_higher_wage() =>
        Gen.Select(s_way, Gen.Int[0, 200], Gen.Int[0, 200])
            .Sample((way, wage, more) => Assert.True(way.TotalUsd(wage + more) >= way.TotalUsd(wage)));

    [Fact]
    public void Materials_of_60_against_5_hours_break_even_at_12() =>
        Assert.Equal(
            new BreakEven.At(12, FirstIsCheaperAbove: true),
            BreakEvens.Wage(new CostAtWage(OtherUsd: 60, Hours: 1), new CostAtWage(OtherUsd: 0, Hours: 6))
        );

    [Fact]
    public void More_hours_and_more_materials_are_never_cheaper() =>
        Assert.Equal(
            new BreakEven.Never(FirstIsCheaper: false),
            BreakEvens.Wage(new CostAtWage(10, 6), new CostAtWage(5, 5))
        );

    [Fact]
    public void The_same_is_the_same_at_every_wage() =>
        Assert.Equal(new BreakEven.Everywhere(), BreakEvens.Wage(new CostAtWage(10, 6), new CostAtWage(10, 6)));

    [Fact]
    public void Labour_is_moved_by_the_wage_and_nothing_else() =>
        Assert.Equal(
            new CostAtWage(OtherUsd: 70, Hours: 3),
            CostAtWage.Of([
                new CostItem("a", "", CostKind.Labour, 54, 3, ""),
                new CostItem("b", "", CostKind.Material, 40, 0, ""),
                new CostItem("c", "", CostKind.Equipment, 20, 0, ""),
                new CostItem("d", "", CostKind.LostReturn, 10, 0, ""),
            ])
        );

    [Fact]
    public void A_sprayer_of_600_a_year_that_saves_150_a_hectare_pays_above_4_hectares()
    {
        Assert.Equal(4m, BreakEvens.Area(600, 150));
        Assert.Null(BreakEvens.Area(600, 0));
    }

    [Fact]
    public void An_outlay_comes_back_in_outlay_over_saving()
    {
        Assert.Equal(2.5m, BreakEvens.PaybackYears(1_000, 400));
        Assert.Equal(0m, BreakEvens.PaybackYears(0, -5));
        Assert.Null(BreakEvens.PaybackYears(1_000, 0));
        Assert.Null(BreakEvens.PaybackYears(1_000, -1));
    }
}
