using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>How actions stand when one thing is not known or contradicts another, on worked visits.</summary>
public sealed class StatusTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly Visit s_yard = ShippedRules.Visit("container-yard-with-spurge");

    [Fact]
    public void An_empty_list_of_crops_beside_stock_clears_nothing_that_reaches_the_crop()
    {
        AreaAdvice advice = Advise(s_yard.Areas[0].With("crops", new Answer.Words(WordSet.Empty)));
        Assert.DoesNotContain(advice.Clear, clear => ReachesCrop(clear.Action));
        Assert.Contains(advice.Waiting, waiting => ReachesCrop(waiting.Action) && Names(waiting, "crops"));
        Assert.Contains(advice.Gaps, gap => gap.Kind == GapKind.Contradiction);
    }

    [Fact]
    public void Crops_beside_no_stock_clear_nothing_that_reaches_the_crop()
    {
        AreaAdvice advice = Advise(s_yard.Areas[0].With("stock", "none-present"));
        Assert.DoesNotContain(advice.Clear, clear => ReachesCrop(clear.Action));
        Assert.Contains(advice.Gaps, gap => gap.Kind == GapKind.Contradiction);
    }

    [Theory]
    [InlineData("injury", ActionStatus.Never)]
    [InlineData(null, ActionStatus.Waits)]
    public void An_earlier_use_whose_result_is_not_told_may_have_hurt_the_crop(string? result, ActionStatus expected)
    {
        string treatment = Advise(s_yard.Areas[0]).Clear.First(clear => ReachesCrop(clear.Action)).Action;
        var use = new PastApplication(treatment, s_yard.Date.AddDays(-300), result, WordSet.Empty);
        AreaAdvice advice = Advise(s_yard.Areas[0] with { Past = [use] });
        Assert.Equal(expected, advice.StatusOf(treatment));
        Assert.Contains(advice.AllConclusions(), one =>
            one.Judgement == "it-hurt-the-crop-here-before"
            && one.Action == treatment
            && one.IsCertain == (result is not null)
        );
    }

    [Fact]
    public void A_doubt_that_the_missing_answer_could_raise_makes_clear_unless_and_names_the_question()
    {
        Visit march = ShippedRules.Visit("hollies-and-boxwood-in-march");
        ClearAction spray = Advise(march.Areas[0], march.Date)
            .Clear.Single(clear => clear.Action == "isoxaben-prodiamine-granule");
        Assert.Equal(ActionStatus.ClearUnless, spray.Status);
        Assert.Contains(Need.Question("waters-in-evenly"), spray.Unless);
        Assert.Contains(spray.Doubts, doubt => !doubt.IsCertain);
    }

    [Fact]
    public void Without_the_region_every_treatment_that_is_wanted_waits_for_it()
    {
        VisitArea nowhere = s_yard.Areas[0] with { Answers = s_yard.Areas[0].Answers.Remove("region") };
        AreaAdvice advice = Advise(nowhere);
        Assert.DoesNotContain(advice.Clear, clear => s_knowledge.Treatments.ContainsKey(clear.Action));
        Assert.All(
            Advise(s_yard.Areas[0]).Clear.Where(clear => s_knowledge.Treatments.ContainsKey(clear.Action)),
            clear =>
                Assert.True(Names(advice.Waiting.Single(one => one.Action == clear.Action), "region"), clear.Action)
        );
    }

    [Fact]
    public void What_is_clear_unless_stands_below_what_is_clear_at_the_same_time()
    {
        foreach (AreaAdvice area in ShippedRules.WorkedAreas)
        {
            // Others of the same job stand with its best, whatever their status.
            IEnumerable<ClearAction> best = area.Clear.DistinctBy(clear => clear.Rank);
            foreach (
                var time in best.Where(clear => clear is { NotToday.IsEmpty: true, LacksTool: false })
                    .GroupBy(clear =>
                        (clear.Horizon, clear.Cleans && !clear.ComesAfterCleaning, clear.IsHygiene, clear.StarvingStep)
                    )
            )
                Assert.Equal(
                    time.OrderBy(clear => clear.Status).Select(clear => clear.Action),
                    time.Select(clear => clear.Action)
                );
        }
    }

    [Fact]
    public void Every_action_of_the_catalogue_has_one_status()
    {
        foreach (AreaAdvice area in ShippedRules.WorkedAreas)
        {
            string[] told =
            [
                .. area.Clear.Select(one => one.Action),
                .. area.Waiting.Select(one => one.Action),
                .. area.Barred.Select(one => one.Action),
                .. area.NotAdvised.Select(one => one.Action),
            ];
            Assert.Equal(s_knowledge.Practices.Keys.Concat(s_knowledge.Treatments.Keys).Order(), told.Order());
        }
    }

    private static bool ReachesCrop(string action) =>
        s_knowledge.Treatments.TryGetValue(action, out var treatment) && treatment.ReachesCrop;

    private static bool Names(WaitingAction waiting, string question) =>
        waiting.Needs.Contains(Need.Question(question));

    private static AreaAdvice Advise(VisitArea area, DateOnly? day = null) =>
        ShippedRules.On(AreaCase.Alone(day ?? s_yard.Date, area));
}
