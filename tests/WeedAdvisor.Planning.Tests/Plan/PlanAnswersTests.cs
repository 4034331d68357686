using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Tests.Season.Programme;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Plan;

/// <summary>What answers that are missing could make of a plan.</summary>
public sealed class PlanAnswersTests
{
    private const string Edible = "edible";

    // Answers that take chemicals away when they fall one way.
    private static readonly VisitArea s_silent = Years.DemoYard with
    {
        Answers = Years.DemoYard.Answers.Remove(Edible),
    };

    [Fact]
    public void What_waits_is_asked_for_and_no_answer_saves_more_than_was_said()
    {
        (AreaPlan plan, PlanQuestions questions) = Tried(s_silent, Sizes.Of(few: 8, many: 40));
        Assert.NotEmpty(questions.Blocked);
        Assert.Contains(Edible, questions.BlockedBy);
        Assert.Contains(questions.Tried, one => one.Question == Edible);
        Assert.All(questions.Tried.Where(one => one.Question == Edible), one =>
            Assert.True(plan.Best!.Way.Usd - one.Way.Usd <= questions.MostSavedUsd + 0.01m)
        );
        Assert.Equal(
            questions.Tried.Select(one => Math.Abs(one.ChangeUsd)).OrderDescending(),
            questions.Tried.Select(one => Math.Abs(one.ChangeUsd))
        );
        // Whoever answers gets at least as cheap a plan as was told.
        AnswerTried no = questions.Tried.First(one => one.Question == Edible && one.Way.Usd < plan.Best!.Way.Usd);
        Assert.True(Planned(Years.DemoYard).Best!.Way.Usd <= no.Way.Usd + 0.01m);
    }

    [Fact]
    public void An_untold_past_is_tried_as_if_nothing_had_gone_on()
    {
        VisitArea area = Years.DemoYard with { Past = null };
        (AreaPlan plan, PlanQuestions questions) = Tried(area, 1);
        AnswerTried past = Assert.Single(questions.Tried);
        Assert.Equal(QuestionIds.Past, past.Question);
        Assert.True(past.ChangeUsd < 0);
        Assert.True(-past.ChangeUsd <= questions.MostSavedUsd || questions.Blocked.IsEmpty);
        Assert.Empty(plan.Best!.Uses);
    }

    [Fact]
    public void Without_effort_no_answer_is_tried_and_mowing_round_about_is_priced_all_the_same()
    {
        PlanQuestions questions = Tried(s_silent, 0).Questions;
        Assert.Equal(PlanQuestions.None, questions with { Source = null });
        Assert.NotNull(questions.Source);
    }

    [Fact]
    public void Cleaning_round_about_saves_nothing_where_nothing_seeds_there()
    {
        Assert.True(Tried(Years.DemoYard, 1).Questions.Source!.SavesUsd > 0);
        VisitArea mown = Years.DemoYard.Taking((QuestionIds.Surroundings, new Answer.Words(WordSet.Of("mown"))));
        Assert.Null(Tried(mown, 1).Questions.Source);
    }

    private static (AreaPlan Plan, PlanQuestions Questions) Tried(VisitArea area, int most)
    {
        AreaPlan plan = Planned(area);
        return (plan, PlanAnswers.Of(ShippedRules.Advisor, AreaCase.Alone(Years.DemoDay, area), plan, most));
    }

    private static AreaPlan Planned(VisitArea area) =>
        PlanSearch.Of(
            PlanCase.Of(ShippedRules.Advisor, AreaCase.Alone(Years.DemoDay, area), new PlanRequest()).Value!,
            FewerRounds.Effort
        );
}
