using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>
/// What hangs on the day on which stock is potted on or sold, or plants come, on where a tractor drives, and on where
/// plants go, with the rules that ship (common practice).
/// </summary>
public sealed class WhatComesNextTests
{
    private static readonly DateOnly s_day = new(2026, 4, 14);
    private static readonly Visit s_visit = ShippedRules.Visit("what-comes-next");

    [Theory]
    [InlineData("sale", 28, true)]
    [InlineData("sale", 29, false)]
    [InlineData("potting-on", 5, false)]
    public void Who_tells_what_comes_next_is_not_asked_whether_it_ships_soon(string next, int days, bool isSoon)
    {
        VisitArea area = Area("shrubs").Without("shipping-soon").With("comes-next", next);
        Assert.Equal(
            isSoon,
            AreaReading.Of(area.With("comes-next-on", s_day.AddDays(days)), s_day, ShippedRules.Knowledge).ShipsSoon
        );
    }

    [Fact]
    public void What_is_told_of_shipping_counts_before_what_follows()
    {
        VisitArea area = Area("shrubs").With("shipping-soon", "yes");
        Assert.True(AreaReading.Of(area, s_day, ShippedRules.Knowledge).ShipsSoon);
    }

    [Fact]
    public void A_sale_without_its_day_leaves_open_whether_it_ships_soon() =>
        Assert.Null(AreaReading.Of(Area("shrubs").Without("comes-next-on"), s_day, ShippedRules.Knowledge).ShipsSoon);

    [Theory]
    [InlineData("headland", true)]
    [InlineData("pad", true)]
    [InlineData("liners", false)]
    public void A_sprayer_on_a_tractor_is_a_boom_only_where_it_drives(string area, bool isBoom) =>
        Assert.Equal(
            isBoom,
            AreaReading
                .Of(Area(area).With("equipment", "tractor-sprayer"), s_day, ShippedRules.Knowledge)
                .Equipment.Contains("boom-sprayer")
        );

    [Theory]
    [InlineData(42, false)]
    [InlineData(43, true)]
    public void Nothing_is_laid_on_liners_that_are_potted_on_within_six_weeks(int days, bool isClear)
    {
        AreaAdvice advice = On(Area("liners").With("comes-next-on", s_day.AddDays(days)));
        Assert.Equal(isClear, advice.Clear.Any(one => one.Action == "bark-mulch"));
    }

    [Theory]
    [InlineData("other-states", true)]
    [InlineData("abroad", true)]
    [InlineData("near-by", false)]
    public void Only_what_goes_over_a_border_is_held_for_its_list(string to, bool isHeld) =>
        Assert.Equal(
            isHeld,
            On(Area("shrubs").With("ships-to", to))
                .Cautions.Any(one =>
                    one.IsCertain && one.Because.Judgement == "what-crosses-a-border-is-looked-up-first"
                )
        );

    private static AreaAdvice On(VisitArea area) => ShippedRules.On(AreaCase.Alone(s_day, area));

    private static VisitArea Area(string id) => s_visit.Areas.First(area => area.Id == id);
}
