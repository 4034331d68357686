using CsCheck;
using WeedAdvisor.Golden;
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

    // Of two answers that contradict each other the careful one holds: what gives off vapour stays off.
    [Fact]
    public void A_day_of_sale_within_four_weeks_counts_where_it_is_said_that_nothing_ships_soon()
    {
        VisitArea area = Area("shrubs").With("shipping-soon", "no").With("comes-next", "sale");
        Assert.True(
            AreaReading.Of(area.With("comes-next-on", s_day.AddDays(10)), s_day, ShippedRules.Knowledge).ShipsSoon
        );
        Assert.False(
            AreaReading.Of(area.With("comes-next-on", s_day.AddDays(40)), s_day, ShippedRules.Knowledge).ShipsSoon
        );
        string[] barred =
        [
            .. On(area.With("comes-next-on", s_day.AddDays(10)))
                .Barred.Where(one =>
                    one.Because.Any(reason => reason.Judgement == "vapour-does-not-travel-in-a-closed-lorry")
                )
                .Select(one => one.Action),
        ];
        Assert.NotEmpty(barred);
        Assert.All(barred, action =>
            Assert.True(ShippedRules.Knowledge.Treatments[action].Volatile is "moderate" or "high")
        );
    }

    [Theory]
    [InlineData(27, true)]
    [InlineData(28, false)]
    public void Dichlobenil_goes_on_no_pad_on_which_plants_come_within_four_weeks(int days, bool isBarred) =>
        Assert.Equal(
            isBarred,
            On(Area("pad").With("comes-next-on", s_day.AddDays(days)))
                .Barred.Where(one => one.Action == "dichlobenil-granule")
                .SelectMany(one => one.Because)
                .Any(reason => reason.Judgement == "dichlobenil-wants-a-yard-that-stays-empty")
        );

    // Nobody said when plants come, or that any do: then it waits, and is clear nowhere.
    [Theory]
    [InlineData("comes-next-on")]
    [InlineData("comes-next", "comes-next-on")]
    public void Where_it_is_not_told_when_plants_come_dichlobenil_waits(params string[] untold)
    {
        VisitArea pad = ShippedRules
            .Visit("horsetail-on-an-empty-pad")
            .Areas[0]
            .With("comes-next", "plants-come")
            .With("comes-next-on", ShippedRules.Visit("horsetail-on-an-empty-pad").Date.AddDays(90));
        DateOnly day = ShippedRules.Visit("horsetail-on-an-empty-pad").Date;
        Assert.Equal(ActionStatus.Clear, ShippedRules.On(AreaCase.Alone(day, pad)).StatusOf("dichlobenil-granule"));
        Assert.Equal(
            ActionStatus.Waits,
            ShippedRules
                .On(AreaCase.Alone(day, untold.Aggregate(pad, (area, one) => area.Without(one))))
                .StatusOf("dichlobenil-granule")
        );
    }

    // A tractor drives along strips and over empty ground alone: anywhere else it is no tool that clears a chemical.
    [Fact]
    public void Where_no_tractor_drives_its_sprayer_clears_nothing() =>
        new RandomVisits(ShippedRules.Knowledge)
            .Case.Where(drawn => !Drives(drawn.Area))
            .Sample(
                drawn =>
                {
                    AreaAdvice without = ShippedRules.On(WithTools(drawn, "string-trimmer"));
                    AreaAdvice with = ShippedRules.On(WithTools(drawn, "string-trimmer", "tractor-sprayer"));
                    string[] cleared =
                    [
                        .. ShippedRules.Knowledge.Treatments.Keys.Where(id =>
                            with.StatusOf(id) == ActionStatus.Clear && without.StatusOf(id) != ActionStatus.Clear
                        ),
                    ];
                    Assert.True(cleared.Length == 0, string.Join('\n', cleared.Append(Describe.Of(drawn))));
                },
                iter: Sizes.Of(25, 2000)
            );

    // What comes next, on which day, where plants go and which tools are here: not told, none of it clears a chemical.
    [Theory]
    [InlineData("comes-next")]
    [InlineData("comes-next-on")]
    [InlineData("ships-to")]
    [InlineData("shipping-soon")]
    [InlineData("equipment")]
    public void Not_telling_it_makes_no_chemical_clear_that_was_not(string question) =>
        new RandomVisits(ShippedRules.Knowledge)
            .Case.Where(drawn => drawn.Area.Answers.ContainsKey(question) && !IsSoldAndNotShipped(drawn.Area))
            .Sample(
                drawn =>
                {
                    AreaAdvice told = ShippedRules.On(drawn);
                    AreaAdvice less = ShippedRules.On(drawn with { Area = drawn.Area.Without(question) });
                    string[] cleared =
                    [
                        .. ShippedRules.Knowledge.Treatments.Keys.Where(id =>
                            less.StatusOf(id) == ActionStatus.Clear && told.StatusOf(id) != ActionStatus.Clear
                        ),
                    ];
                    Assert.True(cleared.Length == 0, string.Join('\n', cleared.Append(Describe.Of(drawn))));
                },
                iter: Sizes.Of(25, 2000)
            );

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

    private static bool IsSoldAndNotShipped(VisitArea area) =>
        Says(area, "shipping-soon", "no") && Says(area, "comes-next", "sale");

    private static bool Says(VisitArea area, string question, string word) =>
        area.Answers.GetValueOrDefault(question) is Answer.Words { Value: var words } && words.Contains(word);

    private static bool Drives(VisitArea area) =>
        Says(area, "place", "noncrop-strip")
        || Says(area, "place", "walkway")
        || (
            Says(area, "stock", "none-present")
            && (Says(area, "place", "container-yard") || Says(area, "place", "liner-bed"))
        );

    private static AreaCase WithTools(AreaCase drawn, params string[] tools) =>
        drawn with
        {
            Area = drawn.Area.With("equipment", tools),
        };

    private static AreaAdvice On(VisitArea area) => ShippedRules.On(AreaCase.Alone(s_day, area));

    private static VisitArea Area(string id) => s_visit.Areas.First(area => area.Id == id);
}
