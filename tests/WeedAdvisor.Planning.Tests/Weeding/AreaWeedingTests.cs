using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Weeding;

/// <summary>From the answers of an area to what goes into the model.</summary>
public sealed class AreaWeedingTests
{
    private static readonly DateOnly s_day = new(2026, 5, 4);

    [Fact]
    public void The_wage_is_the_one_set_else_the_answer_else_the_price_list()
    {
        Assert.Equal(30, Of(Yard(), terms: new YearTerms(30)).Value!.Year.WageUsd);
        VisitArea answered = Yard() with { Answers = Yard().Answers.Add("labour-rate", new Answer.Number(21)) };
        Assert.Equal(21, Of(answered).Value!.Year.WageUsd);
        Assert.Equal(18, Of(Yard()).Value!.Year.WageUsd);
        Assert.Contains(Of(Yard()).Value!.Assumptions, line =>
            line.Contains("the price list, invented", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Without_any_wage_or_with_a_negative_one_it_is_refused()
    {
        KnowledgeBase without = ShippedRules.Knowledge with
        {
            Prices = ShippedRules.Knowledge.Prices.Remove("labour-rate"),
        };
        Assert.Contains("'labour-rate'", Refusal(Of(Yard(), without)), StringComparison.Ordinal);
        Assert.Contains("0 to 10000", Refusal(Of(Yard(), terms: new YearTerms(-1))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_heated_house_has_its_own_months()
    {
        VisitArea heated = With(("cover", "film-on"), ("heated", "yes"));
        Assert.Equal("heated-house", Of(heated).Value!.Year.Site.EmergenceZone);
        Assert.Equal(
            "pacific-northwest",
            Of(With(("cover", "film-on"), ("heated", "no"))).Value!.Year.Site.EmergenceZone
        );
        // Heat under the open sky is a slip, and warms nothing.
        Assert.Equal(
            "pacific-northwest",
            Of(With(("cover", "open-sky"), ("heated", "yes"))).Value!.Year.Site.EmergenceZone
        );
    }

    [Theory]
    [InlineData("house-floor", "established")]
    [InlineData("substrate-pile", "none-present")]
    [InlineData("container-yard", "none-present")]
    public void Where_no_pots_stand_there_are_no_figures(string place, string stock)
    {
        VisitArea area = With(("place", place), ("stock", stock));
        Assert.False(AreaReading.Of(area, s_day, ShippedRules.Knowledge).HasPots);
        Assert.Contains("No pots stand here", Refusal(Of(area)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(4, 4)]
    [InlineData(2.5, 3)]
    [InlineData(0.3, 1)]
    [InlineData(0, null)]
    public void The_present_interval_is_counted_in_whole_weeks(double answer, int? weeks) =>
        Assert.Equal(
            weeks,
            Of(
                Yard() with
                {
                    Answers = Yard().Answers.Add("weeding-interval", new Answer.Number((decimal)answer)),
                }
            ).Value!.PresentIntervalWeeks
        );

    [Fact]
    public void A_mulch_that_lies_there_holds_weeds_back_and_a_thin_one_less()
    {
        double Emerged(decimal? depth)
        {
            VisitArea area = With(("mulch", depth is null ? "none" : "bark"));
            if (depth is { } cm)
                area = area with { Answers = area.Answers.Add("mulch-depth", new Answer.Number(cm)) };
            return IntervalComparison.Of(Of(area).Value!.Year, [2]).Value!.Intervals[0].Season.Weeds[0].Emerged;
        }

        Assert.True(Emerged(4) < Emerged(1));
        Assert.True(Emerged(1) < Emerged(null));
    }

    [Fact]
    public void A_weed_noted_in_two_stages_is_one_weed_that_stands_in_both()
    {
        VisitArea area = Yard() with
        {
            Weeds =
            [
                new WeedSeen("liverwort", "seedling", 1),
                new WeedSeen("liverwort", "mature", 20),
                new WeedSeen("algae-crust", "mature", 5),
            ],
        };
        AreaWeeding weeding = Of(area).Value!;
        YearWeed liverwort = Assert.Single(weeding.Year.Weeds.Counted);
        Assert.Equal(2, liverwort.Standing.Count(plants => plants > 0));
        Assert.Contains(weeding.Assumptions, line => line.StartsWith("Left out: ", StringComparison.Ordinal));
    }

    [Fact]
    public void Weeds_that_are_named_keep_what_was_seen_of_them()
    {
        VisitArea area = Yard() with { Weeds = [new WeedSeen("liverwort", "mature", 20)] };
        ImmutableArray<YearWeed> weeds = Of(
            area,
            terms: new YearTerms { Weeds = ["eclipta", "liverwort", "eclipta"] }
        ).Value!.Year.Weeds.Counted;
        Assert.Equal(["eclipta", "liverwort"], weeds.Select(weed => weed.Weed.Id));
        Assert.Empty(weeds[0].Standing);
        Assert.NotEmpty(weeds[1].Standing);
    }

    private static string Refusal(Outcome<AreaWeeding, string> outcome) => Assert.Single(outcome.Refusals);

    private static Outcome<AreaWeeding, string> Of(
        VisitArea area,
        KnowledgeBase? knowledge = null,
        YearTerms? terms = null
    ) =>
        AreaWeeding.Of(
            AreaReading.Of(area, s_day, knowledge ?? ShippedRules.Knowledge),
            s_day,
            knowledge ?? ShippedRules.Knowledge,
            terms ?? new YearTerms()
        );

    private static VisitArea Yard() => With(("place", "container-yard"), ("stock", "established"));

    private static VisitArea With(params (string Question, string Word)[] answers)
    {
        var area = VisitArea.Blank("yard", "The yard");
        return area with
        {
            Answers = area
                .Answers.SetItem("region", new Answer.Words(WordSet.Of(["willamette-valley"])))
                .SetItems(
                    answers.Select(answer =>
                        KeyValuePair.Create(answer.Question, (Answer)new Answer.Words(WordSet.Of([answer.Word])))
                    )
                ),
            Weeds = [new WeedSeen("spurge-spotted", "expected", null)],
        };
    }
}
