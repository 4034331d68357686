using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>
/// What is done is worded for the ground it is done on: nobody weeds a bark heap from the pot rim (common practice).
/// </summary>
public class GroundTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    private static readonly DateOnly s_day = new(2026, 6, 1);

    [Theory]
    [InlineData("propagation-house", "unrooted-cuttings", "trays")]
    [InlineData("propagation-house", "rooted-liners", "trays")]
    [InlineData("propagation-house", "established", "pots")]
    [InlineData("propagation-house", "none-present", "floor")]
    [InlineData("propagation-house", null, "trays")]
    [InlineData("growing-house", "seedlings-and-plugs", "trays")]
    [InlineData("growing-house", "established", "pots")]
    [InlineData("growing-house", "none-present", "floor")]
    [InlineData("overwintering-house", "newly-potted", "pots")]
    [InlineData("liner-bed", "rooted-liners", "pots")]
    [InlineData("container-yard", "established", "pots")]
    [InlineData("container-yard", "none-present", "pad")]
    [InlineData("house-floor", "established", "floor")]
    [InlineData("walkway", "none-present", "pad")]
    [InlineData("substrate-pile", "none-present", "heap")]
    [InlineData("pot-store", null, "store")]
    [InlineData("noncrop-strip", "none-present", "strip")]
    [InlineData("water-edge", "unrooted-cuttings", "bank")]
    [InlineData(null, "established", null)]
    public void The_place_and_the_stock_say_what_ground_is_worked_on(string? place, string? stock, string? ground) =>
        Assert.Equal(ground, GroundOf(place, stock));

    [Fact]
    public void Every_place_has_its_ground_also_without_stock()
    {
        WordList grounds = s_knowledge.Vocabulary["ground"];
        foreach (string place in Answers("place"))
        {
            Assert.All(Answers("stock").Cast<string?>().Append(null), stock =>
                Assert.True(grounds.Contains(GroundOf(place, stock) ?? "none"), $"{place} with {stock}")
            );
        }
    }

    [Fact]
    public void Each_wording_and_each_cost_is_for_a_ground_where_the_practice_can_be_done()
    {
        foreach (Practice practice in s_knowledge.Practices.Values)
        {
            string?[] reached =
            [
                .. practice.Places.SelectMany(place => practice.StockStages.Select(stock => GroundOf(place, stock))),
            ];
            Assert.All(practice.Wordings, wording => Assert.Contains(wording.Ground, reached));
            Assert.All(practice.CostOnGrounds, cost => Assert.Contains(cost.Ground, reached));
        }
    }

    [Fact]
    public void Where_no_pots_stand_nothing_of_weeding_speaks_of_what_stands_in_pots()
    {
        int looked = 0;
        foreach (Practice practice in s_knowledge.Practices.Values.Where(one => one.Kind == "weeding"))
        {
            foreach (
                string place in practice.Places.Where(place => !s_knowledge.Vocabulary["holds-pots"].Contains(place))
            )
            {
                looked++;
                string what = practice.WhatOn(GroundOf(place, null));
                Assert.DoesNotContain("pot rim", what, StringComparison.OrdinalIgnoreCase);
                Assert.DoesNotContain("in the pots and", what, StringComparison.OrdinalIgnoreCase);
                Assert.DoesNotContain("every block", what, StringComparison.OrdinalIgnoreCase);
                Assert.DoesNotContain("knock the plant out", what, StringComparison.OrdinalIgnoreCase);
            }
        }

        Assert.True(looked > 20, $"only {looked} places looked at");
    }

    [Fact]
    public void A_heap_is_weeded_in_other_words_and_by_its_size_not_by_the_pot()
    {
        CatalogueAction weeding = s_knowledge.ActionOf("hand-weed-now")!;
        Assert.NotEqual(weeding.WhatOn("pots"), weeding.WhatOn("heap"));
        Assert.Equal(weeding.What, weeding.WhatOn("pots"));
        Assert.Equal(weeding.What, weeding.WhatOn(null));
        Assert.NotNull(weeding.CostOn("heap")!.LabourHours);
        Assert.Null(weeding.CostOn("heap")!.Work);
        Assert.Equal(WorkingTimeIds.Weeding, weeding.CostOn("pots")!.Work);
        Assert.Equal(weeding.Cost, weeding.CostOn(null));
    }

    private static IEnumerable<string> Answers(string question) =>
        s_knowledge.QuestionOf(question)!.Choices.Select(answer => answer.Id);

    private static string? GroundOf(string? place, string? stock)
    {
        VisitArea area = VisitArea.Blank("a", "A");
        area = place is null ? area : area.With("place", place);
        area = stock is null ? area : area.With("stock", stock);
        return AreaReading.Of(area, s_day, s_knowledge).Ground;
    }
}
