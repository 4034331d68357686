using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>
/// Where nobody tells which weeds are to come, those that are usual there are taken to come, and no others.
/// </summary>
public sealed class ComingWeedsTests
{
    private const int AHandful = 6;

    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly string[] s_narrowing = ["region", "place", "cover", "heated", "surroundings"];

    // Common practice of the trade; that bittercress is in nearly every container nursery: osu-bc.
    [Theory]
    [InlineData("north-carolina-piedmont", "2026-04-14", "spurge-spotted", "bittercress-flexuous", "eclipta")]
    [InlineData(
        "north-carolina-piedmont",
        "2026-08-27",
        "spurge-spotted",
        "bittercress-flexuous",
        "woodsorrel-creeping"
    )]
    [InlineData("willamette-valley", "2026-03-10", "bittercress-flexuous", "groundsel-common", "liverwort")]
    public void A_clean_yard_expects_what_every_nursery_of_its_region_has(
        string region,
        string day,
        params string[] weeds
    )
    {
        ComingWeeds coming = On(Clean(region), DateOnly.Parse(day, null)).Reading.Coming;

        Assert.Equal(Origin.Assumed, coming.From);
        Assert.Subset(coming.Weeds.Select(weed => weed.Weed).ToHashSet(), weeds.ToHashSet());
    }

    [Fact]
    public void In_the_dead_of_winter_a_yard_of_the_north_expects_none_that_wants_warmth() =>
        Assert.All(On(Clean("north-east-ohio"), new DateOnly(2026, 12, 20)).Reading.Coming.Weeds, weed =>
            Assert.Equal("winter-annual", s_knowledge.Weeds[weed.Weed].LifeCycle)
        );

    [Fact]
    public void Weeds_that_seed_round_about_bring_what_the_wind_carries_and_take_nothing_away()
    {
        VisitArea clean = Clean("north-carolina-piedmont");
        ComingWeeds alone = On(clean, RandomVisits.Day).Reading.Coming;
        ComingWeeds seeded = On(clean.With("surroundings", "weedy-seeding"), RandomVisits.Day).Reading.Coming;

        Assert.Equal(alone.Weeds, seeded.Weeds.Where(weed => !weed.BlowsIn));
        Assert.All(seeded.Weeds.Where(weed => weed.BlowsIn), weed =>
            Assert.Contains("wind", s_knowledge.Weeds[weed.Weed].SpreadsBy)
        );
    }

    [Fact]
    public void What_is_told_to_come_stands_instead_and_none_is_none()
    {
        VisitArea told = Clean("north-carolina-piedmont").Expecting("doveweed");
        VisitArea none = Clean("north-carolina-piedmont").With("expected-weeds", "none");
        VisitArea unsure = Clean("north-carolina-piedmont") with { Weeds = [new WeedSeen("doveweed", null, null)] };

        Assert.Equal("doveweed", Assert.Single(On(told, RandomVisits.Day).Reading.Coming.Weeds).Weed);
        Assert.Equal(Origin.Answer, On(told, RandomVisits.Day).Reading.Coming.From);
        Assert.Empty(On(none, RandomVisits.Day).Reading.Coming.Weeds);
        Assert.Empty(On(unsure, RandomVisits.Day).Reading.Coming.Weeds);
    }

    [Fact]
    public void On_clean_settled_stock_a_preventive_is_the_first_work()
    {
        VisitArea told = ShippedRules.Visit("clean-yard-in-august").Areas[0];
        AreaAdvice advice = On(told with { Weeds = [] }, new DateOnly(2026, 8, 27));

        // A layer, or a chemical that stops seed: either keeps them back.
        Assert.Equal(WorksOn.Coming, advice.Clear[0].WorksOn);
        Assert.Contains(advice.Clear, action =>
            s_knowledge.Treatments.TryGetValue(action.Action, out Treatment? treatment)
            && treatment.ActsOn.Contains("germinating")
        );
        Assert.Contains(advice.Clear, action => s_knowledge.ActionOf(action.Action) is Practice { Kind: "covering" });
        Assert.Contains(advice.Cautions, caution =>
            caution.Because.Judgement == "waiting-until-weeds-show-is-too-late"
        );
    }

    [Fact]
    public void Every_weed_taken_to_come_is_common_there_sits_in_such_a_place_and_comes_up_in_season() =>
        Sampled(
            (drawn, advice) =>
            {
                ComingWeeds coming = advice.Reading.Coming;
                if (coming.From != Origin.Assumed)
                    return;
                Assert.InRange(coming.Weeds.Length, 0, AHandful);
                Assert.All(coming.Weeds.Select(weed => s_knowledge.Weeds[weed.Weed]), weed =>
                {
                    Assert.False(weed.CommonestIn.Count + weed.CommonIn.Count == 0);
                    Assert.Contains(Word(drawn.Area, "place"), weed.Places);
                    Assert.Contains(weed.Emergence.Values, months => months.Any(IsSoon));
                    Assert.DoesNotContain(drawn.Area.Weeds ?? [], seen => seen.Weed == weed.Id);
                });
            }
        );

    [Fact]
    public void Who_tells_less_of_the_place_is_told_of_no_other_weed() =>
        Sampled(
            (drawn, advice) =>
            {
                HashSet<string> all = [.. advice.Reading.Coming.Weeds.Select(weed => weed.Weed)];
                foreach (string question in s_narrowing.Where(drawn.Area.Answers.ContainsKey))
                {
                    // Heat told of an open yard counts for nothing; without the yard it is heat again.
                    if (question is "cover" && drawn.Area.Answers.ContainsKey("heated"))
                        continue;
                    VisitArea less = drawn.Area.Without(question);
                    Assert.Subset(all, On(less, drawn.Date).Reading.Coming.Weeds.Select(weed => weed.Weed).ToHashSet());
                }
            }
        );

    // The weeds are told by hand as expected, which the program then does not work out.
    [Fact]
    public void A_weed_taken_to_come_does_what_it_would_do_if_it_were_told_and_no_more() =>
        Sampled(
            (drawn, advice) =>
            {
                if (drawn.Area.Weeds is not { } seen || advice.Reading.Coming is not { From: Origin.Assumed } coming)
                    return;
                IEnumerable<WeedSeen> told = coming.Weeds.Select(weed => new WeedSeen(weed.Weed, "expected", null));
                AreaAdvice same = ShippedRules.On(drawn with { Area = drawn.Area with { Weeds = [.. seen, .. told] } });
                // Where it is not known what is usual, more may come: something may wait for it, nothing is freed.
                Assert.All(Actions.Where(action => coming.Needs.IsEmpty || IsClear(advice, action)), action =>
                    Assert.Equal(same.StatusOf(action), advice.StatusOf(action))
                );
            }
        );

    [Fact]
    public void A_weed_taken_to_come_is_no_reason_to_clean() =>
        Sampled(
            (drawn, advice) =>
            {
                AreaAdvice without = ShippedRules.On(drawn with { Area = drawn.Area.With("expected-weeds", "none") });
                foreach (ClearAction cleaning in advice.Clear.Where(one => one.WorksOn == WorksOn.Standing))
                {
                    ClearAction? before = without.Clear.FirstOrDefault(one => one.Action == cleaning.Action);
                    Assert.True(before is not null, $"{cleaning.Action} is clear for weeds that nobody saw");
                    Assert.True(cleaning.Certainty <= before.Certainty + 1e-9, $"{cleaning.Action} gains by them");
                }
            }
        );

    private static bool IsClear(AreaAdvice advice, string action) =>
        advice.StatusOf(action) is ActionStatus.Clear or ActionStatus.ClearUnless;

    private static IEnumerable<string> Actions => s_knowledge.Practices.Keys.Concat(s_knowledge.Treatments.Keys);

    private static void Sampled(Action<AreaCase, AreaAdvice> holds) =>
        DrawnAdvice.OfCases.Sample(holds, Sizes.Of(60, 5000));

    // Of the north or, half a year later, of the south.
    private static bool IsSoon(int month) =>
        new[] { 0, 1, 6, 7 }.Select(ahead => (RandomVisits.Day.Month - 1 + ahead) % 12 + 1).Contains(month);

    private static string? Word(VisitArea area, string question) =>
        area.Answers.GetValueOrDefault(question) is Answer.Words words ? words.Value.First() : null;

    private static AreaAdvice On(VisitArea area, DateOnly day) => ShippedRules.On(AreaCase.Alone(day, area));

    private static VisitArea Clean(string region) =>
        new(
            "yard",
            "Yard",
            AreaAnswers.Of(
                ("put-on-lately", "no"),
                ("place", "container-yard"),
                ("cover", "open-sky"),
                ("stock", "established"),
                ("region", region)
            ),
            [],
            []
        );
}
