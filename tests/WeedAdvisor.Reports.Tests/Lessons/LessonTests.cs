using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Lessons;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Lessons;

/// <summary>The lessons that ship: every step is true of its visit.</summary>
public sealed class LessonTests
{
    private static readonly ImmutableArray<Lesson> s_lessons = ShippedRules.Knowledge.Lessons;

    public static TheoryData<string> Lessons => new(s_lessons.Select(lesson => lesson.Id));

    [Fact]
    public void There_are_twelve_and_more_among_them_those_that_every_class_begins_with()
    {
        Assert.InRange(s_lessons.Length, 12, int.MaxValue);
        Assert.Subset(
            s_lessons.Select(lesson => lesson.Id).ToHashSet(),
            (HashSet<string>)["liverwort", "propagation", "not-today", "rotation", "rounds", "season"]
        );
    }

    [Theory]
    [MemberData(nameof(Lessons))]
    public void A_trainee_may_choose_all_that_is_clear_and_what_tempts_and_the_list_tells_no_order(string id)
    {
        AreaAdvice area = AdviceOf(s_lessons.Single(one => one.Id == id));
        ImmutableArray<string> choices = TraineeChoices.Of(area, ShippedRules.Knowledge);
        Assert.Subset(
            choices.ToHashSet(),
            (HashSet<string>)[.. area.Clear.Where(one => one.Horizon != Horizon.Habit).Select(one => one.Action)]
        );
        Assert.Equal(choices.Distinct(), choices);
        Assert.InRange(choices.Count(choice => area.Barred.Any(one => one.Action == choice)), 0, 8);
        string[] names = [.. choices.Select(choice => ShippedRules.Knowledge.ActionOf(choice)!.Name)];
        Assert.Equal(names.Order(StringComparer.OrdinalIgnoreCase), names);
    }

    [Theory]
    [MemberData(nameof(Lessons))]
    public void Every_step_names_a_rule_that_holds_in_its_visit_each_once(string id)
    {
        Lesson lesson = s_lessons.Single(one => one.Id == id);
        HashSet<string> certain =
        [
            .. AdviceOf(lesson).AllConclusions().Where(reason => reason.IsCertain).Select(reason => reason.Judgement),
        ];
        Assert.Empty(lesson.Steps.Select(step => step.Rule).Except(certain));
        Assert.Equal(lesson.Steps.Length, lesson.Steps.Select(step => step.Rule).Distinct().Count());
        Assert.InRange(lesson.Steps.Length, 3, 10);
        Assert.InRange(lesson.Points.Length, 1, 5);
        Assert.All(lesson.Steps, step => Assert.EndsWith("?", step.Ask, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Lessons))]
    public void A_page_for_each_question_and_no_answer_before_its_question(string id)
    {
        Lesson lesson = s_lessons.Single(one => one.Id == id);
        var pages = new LessonPages(ShippedRules.Knowledge).Of(lesson, AdviceOf(lesson));
        Assert.Equal(lesson.Steps.Length + 1, pages.Length);
        for (int i = 0; i < lesson.Steps.Length; i++)
        {
            string before = DocumentText.Of(pages[i], 200);
            string after = DocumentText.Of(pages[i + 1], 200);
            Assert.Contains(lesson.Steps[i].Ask, before, StringComparison.Ordinal);
            Assert.DoesNotContain(lesson.Steps[i].Rule, before, StringComparison.Ordinal);
            Assert.Contains(lesson.Steps[i].Rule, after, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_order_of_the_advice_agrees_with_itself_and_its_reverse_does_not()
    {
        foreach (Lesson lesson in s_lessons)
        {
            AreaAdvice area = AdviceOf(lesson);
            ImmutableArray<string> order =
            [
                .. area
                    .Clear.Where(one => one.Horizon != Horizon.Habit)
                    .DistinctBy(one => one.Rank)
                    .Take(5)
                    .Select(one => one.Action),
            ];
            if (order.Length < 3)
                continue;
            TraineeScore same = TraineeScore.Of(area, order);
            Assert.Equal(1, same.TauB!.Value, 12);
            Assert.Empty(same.Missed);
            Assert.Empty(same.NotClear);
            Assert.Equal(-1, TraineeScore.Of(area, [.. order.Reverse()]).TauB!.Value, 12);
            TraineeScore short_ = TraineeScore.Of(area, [order[0]]);
            Assert.Equal(order.Skip(1).Take(2), short_.Missed);
        }
    }

    [Fact]
    public void What_is_named_and_barred_is_told()
    {
        Lesson lesson = s_lessons.Single(one => one.Id == "liverwort");
        TraineeScore score = TraineeScore.Of(AdviceOf(lesson), ["scrape-off-liverwort", "shorten-mist"]);
        Assert.Equal(["scrape-off-liverwort"], score.NotClear);
        Assert.True(score.TauB < 0);
    }

    private static AreaAdvice AdviceOf(Lesson lesson) =>
        ShippedRules.Advisor.Advise(ShippedRules.Visit(lesson.Visit)).Areas.Single(area => area.Area.Id == lesson.Area);
}
