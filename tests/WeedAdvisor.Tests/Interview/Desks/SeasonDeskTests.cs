using WeedAdvisor.Inference;
using WeedAdvisor.Interview.Desks.Season;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Interview.Desks;

/// <summary>The season plan on the screen, with the shipped rules and the demo visit.</summary>
public sealed class SeasonDeskTests
{
    // Its year has fewer choices than that of the yard.
    private const string Bed = "liner-bed";

    [Fact]
    public void It_shows_the_plan_that_the_command_gives()
    {
        SeasonDesk desk = Desk("container-yard");
        SeasonPlan plan = desk.Plan!.Plan!;
        string lines = Text(desk);
        Assert.Contains(plan.Applications[0].Name.Split('-')[0], lines, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(": preventives $", desk.Money.Text, StringComparison.Ordinal);
        Assert.Contains("The label is the law", lines, StringComparison.Ordinal);
    }

    [Fact]
    public void Closing_the_week_of_an_application_moves_it_and_says_what_that_costs()
    {
        SeasonDesk desk = Desk("container-yard");
        desk.MoveToApplication(+1);
        decimal before = desk.Plan!.Way!.Usd;
        desk.ToggleWeek();
        Assert.DoesNotContain(desk.Plan.Plan!.Applications, one => one.Week == desk.Week);
        Assert.True(desk.Plan.Way!.Usd >= before);
        Assert.Equal(desk.Plan.Way.Usd - before, desk.DearerUsd);
        Assert.Contains("closed by your wish", desk.AboutWeek().Text, StringComparison.Ordinal);
        Assert.True(desk.IsClosed(desk.Week));
        Assert.Contains("1 week closed", desk.Title, StringComparison.Ordinal);
        Assert.Contains("1 week closed", Text(desk), StringComparison.Ordinal);
        desk.ToggleWeek();
        Assert.Equal(before, desk.Plan.Way!.Usd);
    }

    [Fact]
    public void A_month_closes_and_opens_as_a_whole()
    {
        SeasonDesk desk = Desk(Bed);
        desk.Move(-52);
        desk.Move(9);
        desk.ToggleWeek();
        desk.ToggleMonth();
        Assert.All(desk.Plan!.Plan!.Applications, one => Assert.NotEqual(6, desk.Plan.Case.Year.DayOf(one.Week).Month));
        desk.ToggleMonth();
        Assert.Empty(desk.Plan.Case.Request.Closed);
    }

    [Fact]
    public void A_product_is_dropped_and_taken_back()
    {
        SeasonDesk desk = Desk(Bed);
        SeasonApplication first = desk.Plan!.Plan!.Applications[0];
        desk.DropOrTakeBack();
        Assert.DoesNotContain(desk.Plan.Plan!.Applications, one => one.Name == first.Name);
        Assert.Contains("dearer than at first", desk.LastChange.Text, StringComparison.Ordinal);
        desk.Move(52);
        while (desk.Plan.Plan!.Applications.Any(one => one.Week == desk.Week))
            desk.Move(-1);
        desk.DropOrTakeBack();
        Assert.Empty(desk.Plan.Case.Request.Dropped);
    }

    [Fact]
    public void Rotation_and_number_are_loosened_tightened_and_reset()
    {
        SeasonDesk desk = Desk(Bed);
        desk.NextRotation();
        Assert.Equal(2, desk.Plan!.Case.Request.RunOfSite);
        desk.NextRotation();
        Assert.Null(desk.Plan.Case.Request.RunOfSite);
        Assert.Contains("no rotation", Text(desk), StringComparison.Ordinal);
        Assert.True(desk.DearerUsd <= 0);
        for (int i = 0; i < 20; i++)
            desk.AllowMore(-1);
        Assert.Empty(desk.Plan.Plan!.Applications);
        Assert.Contains(desk.Lines(120), line =>
            line.Text.StartsWith("At most 0 applications", StringComparison.Ordinal)
        );
        desk.Reset();
        Assert.Equal(1, desk.Plan.Case.Request.RunOfSite);
        Assert.NotEmpty(desk.Plan.Plan!.Applications);
        Assert.Equal(0, desk.DearerUsd);
    }

    [Fact]
    public void The_cursor_stays_in_the_year()
    {
        SeasonDesk desk = Desk("container-yard");
        desk.Move(-5);
        Assert.Equal(0, desk.Week);
        desk.Move(500);
        Assert.Equal(51, desk.Week);
    }

    [Fact]
    public void An_area_that_cannot_be_planned_says_why_and_bears_every_key()
    {
        SeasonDesk desk = Desk("bark-pile");
        Assert.Null(desk.Plan);
        Assert.Contains("No pots stand here", desk.Lines(80)[0].Text, StringComparison.Ordinal);
        PressAll(desk);
        Assert.Null(desk.Strip);
        Assert.Empty(desk.Details());
        Assert.Equal("", desk.AboutWeek().Text);
    }

    [Fact]
    public void The_interview_stays_where_it_was()
    {
        InterviewSession session = DemoInterview.At(Bed);
        string before = string.Join(',', session.Advice.Clear.Select(clear => clear.Action));
        new SeasonDesk(session).Read();
        session.GoToArea(0);
        session.GoToArea(session.Visit.Areas.Select((area, i) => (area, i)).Single(one => one.area.Id == Bed).i);
        Assert.Equal(before, string.Join(',', session.Advice.Clear.Select(clear => clear.Action)));
    }

    [Fact]
    public void No_line_is_wider_than_asked_in_any_week()
    {
        SeasonDesk desk = Desk("container-yard");
        desk.DropOrTakeBack();
        foreach (int width in new[] { 58, 78, 118 })
        {
            desk.Move(-52);
            for (int week = 0; week < 52; week++, desk.Move(1))
                Assert.All(desk.Lines(width), line => Assert.True(line.Text.Length <= width, line.Text));
            Assert.All(PageLines.Of(desk.Details(), width), line => Assert.True(line.Text.Length <= width, line.Text));
        }
    }

    [Fact]
    public void Until_it_is_read_it_says_that_it_is_at_work_and_bears_every_key()
    {
        var desk = new SeasonDesk(DemoInterview.At(Bed));
        Assert.Contains("one moment", desk.Money.Text, StringComparison.Ordinal);
        PressAll(desk);
        Assert.Null(desk.Plan);
        Assert.Empty(desk.Refusals);
        desk.Read();
        Assert.NotNull(desk.Plan!.Plan);
    }

    [Theory]
    [InlineData("region", "the region is not answered")]
    [InlineData("weeds", "no weed is named")]
    [InlineData("past", "nothing is said of earlier applications")]
    public void An_area_that_lacks_an_answer_says_which(string lacking, string said)
    {
        var desk = new SeasonDesk(DemoInterview.At(Bed, area => lacking switch
                {
                    "weeds" => area with { Weeds = null },
                    "past" => area with { Past = null },
                    _ => area with { Answers = area.Answers.Remove(lacking) },
                }));
        desk.Read();
        Assert.Null(desk.Plan);
        Assert.Equal(LineTone.Warning, desk.Money.Tone);
        Assert.Contains(said, Text(desk), StringComparison.Ordinal);
    }

    [Fact]
    public void The_cursor_goes_from_application_to_application_and_marks_it()
    {
        SeasonDesk desk = Desk("container-yard");
        int[] weeks = [.. desk.Plan!.Plan!.Applications.Select(one => one.Week)];
        Assert.Equal(weeks[0], desk.Week);
        desk.MoveToApplication(-1);
        Assert.Equal(weeks[0], desk.Week);
        foreach (int week in weeks[1..].Append(weeks[^1]))
        {
            desk.MoveToApplication(+1);
            Assert.Equal(week, desk.Week);
        }

        Assert.StartsWith(
            "> " + desk.Strip!.Letters[^1],
            Assert.Single(desk.Lines(118), line => line.Text.StartsWith('>')).Text,
            StringComparison.Ordinal
        );
        desk.MoveToApplication(-1);
        Assert.Equal(weeks[^2], desk.Week);
    }

    [Fact]
    public void Where_nothing_goes_on_and_nothing_was_dropped_it_says_where_to_go()
    {
        SeasonDesk desk = Desk(Bed);
        while (desk.Plan!.Plan!.Applications.Any(one => one.Week == desk.Week))
            desk.Move(1);
        desk.DropOrTakeBack();
        Assert.Contains("go to an application", desk.LastChange.Text, StringComparison.Ordinal);
        desk.Undo();
        desk.KeepOrLetGo();
        Assert.Contains("go to an application", desk.LastChange.Text, StringComparison.Ordinal);
        Assert.Equal(0, desk.DearerUsd);
    }

    [Fact]
    public void Fewer_counts_from_what_is_planned_so_that_every_press_tells()
    {
        SeasonDesk desk = Desk(Bed);
        int planned = desk.Plan!.Plan!.Applications.Length;
        Assert.True(planned < desk.Plan.Case.Problem.Wishes.AtMost);
        desk.AllowMore(-1);
        Assert.Equal(planned - 1, desk.Wishes.AtMost);
        Assert.True(desk.DearerUsd > 0);
        desk.AllowMore(+1);
        Assert.Equal(planned, desk.Wishes.AtMost);
        Assert.Equal(0, desk.DearerUsd);
    }

    [Fact]
    public void Wishes_that_clash_are_told_by_name_and_the_last_one_can_be_taken_back()
    {
        SeasonDesk desk = Desk(Bed);
        string product = desk.Plan!.Plan!.Applications[0].Name;
        desk.KeepOrLetGo();
        Assert.Contains("must go on", desk.LastChange.Text, StringComparison.Ordinal);
        while (desk.Plan.Plan is not null)
            desk.AllowMore(-1);
        Assert.Equal(LineTone.Warning, desk.LastChange.Tone);
        Assert.Contains("at most 0 applications", desk.LastChange.Text, StringComparison.Ordinal);
        Assert.Contains(
            ShippedRules.Knowledge.Treatments[product].Name + " must go on",
            desk.LastChange.Text,
            StringComparison.Ordinal
        );
        Assert.Contains("no plan", desk.Money.Text, StringComparison.Ordinal);
        Assert.Null(desk.DearerUsd);
        Assert.NotNull(desk.Strip);
        desk.Undo();
        Assert.NotNull(desk.Plan.Plan);
        desk.AllowMore(-1);
        desk.KeepOrLetGo();
        Assert.Empty(desk.Wishes.MustUse);
        Assert.Empty(desk.Plan.Plan!.Applications);
    }

    [Fact]
    public void Changes_are_taken_back_one_after_the_other_even_the_taking_back_of_all()
    {
        SeasonDesk desk = Desk(Bed);
        desk.ToggleWeek();
        desk.NextRotation();
        decimal? dearer = desk.DearerUsd;
        desk.Reset();
        Assert.Equal(0, desk.DearerUsd);
        desk.Undo();
        Assert.Equal(dearer, desk.DearerUsd);
        desk.Undo();
        desk.Undo();
        Assert.Empty(desk.Wishes.Closed);
        Assert.Equal(0, desk.DearerUsd);
        desk.Undo();
        Assert.Contains("no change to take back", desk.LastChange.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void After_any_row_of_changes_the_plan_costs_what_it_costs_when_planned_afresh()
    {
        SeasonDesk desk = Desk(Bed);
        InterviewSession session = DemoInterview.At(Bed);
        SeasonCase season = SeasonCase
            .Of(
                ShippedRules.Knowledge,
                session.AdviceOn,
                AreaCase.Of(session.Visit, session.AreaIndex),
                new SeasonRequest()
            )
            .Value!;
        SeasonPlan first = desk.Plan!.Plan!;
        Way firstWay = desk.Plan.Way!;
        Action[] changes =
        [
            desk.ToggleWeek,
            () => desk.MoveToApplication(+1),
            desk.DropOrTakeBack,
            desk.NextRotation,
            () => desk.AllowMore(-1),
            desk.ToggleMonth,
            desk.KeepOrLetGo,
            desk.NextRotation,
            () => desk.AllowMore(+1),
            desk.Undo,
        ];
        foreach (Action change in changes)
        {
            change();
            SeasonCase afresh = season.With(desk.Wishes, ShippedRules.Knowledge);
            YearPlan plan = SeasonPlanner.Quick(
                afresh,
                ShippedRules.Knowledge,
                SeasonSearch.Prepare(afresh.Problem),
                TestContext.Current.CancellationToken
            );
            bool staysFirst = SeasonSearch.Allows(afresh.Problem, first) && !(plan.Way?.Usd <= firstWay.Usd);
            Assert.Equal(staysFirst ? firstWay.Usd : plan.Way?.Usd, desk.Plan!.Way?.Usd);
            Assert.Equal(
                staysFirst ? first.Applications : plan.Plan?.Applications ?? [],
                desk.Plan.Plan?.Applications ?? []
            );
        }
    }

    [Fact]
    public void Wishes_stay_when_the_desk_is_left_and_when_an_answer_changes()
    {
        InterviewSession session = DemoInterview.At(Bed);
        var desks = new SeasonDesks(session);
        SeasonDesk desk = desks.Here();
        desk.Read();
        desk.ToggleWeek();
        int week = desk.Week;
        Assert.Same(desk, desks.Here());
        session.Say("labour-rate", new Answer.Number(36));
        SeasonDesk dearer = desks.Here();
        Assert.False(dearer.IsRead);
        dearer.Read();
        Assert.True(dearer.IsClosed(week));
        Assert.True(dearer.Plan!.HandsOnlyUsd > desk.Plan!.HandsOnlyUsd);
        session.GoToArea(0);
        Assert.Empty(desks.Here().Wishes.Closed);
    }

    private static SeasonDesk Desk(string area)
    {
        var desk = new SeasonDesk(DemoInterview.At(area));
        desk.Read();
        return desk;
    }

    private static void PressAll(SeasonDesk desk)
    {
        desk.Move(1);
        desk.MoveToApplication(1);
        desk.ToggleWeek();
        desk.ToggleMonth();
        desk.DropOrTakeBack();
        desk.KeepOrLetGo();
        desk.NextRotation();
        desk.AllowMore(1);
        desk.AllowMore(-1);
        desk.Undo();
        desk.Reset();
    }

    private static string Text(SeasonDesk desk) => string.Join('\n', desk.Lines(118).Select(line => line.Text));
}
