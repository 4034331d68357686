using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Interview;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Search;

namespace WeedAdvisor.Tests.Interview;

/// <summary>The season plan on the screen, with the shipped rules and the demo visit.</summary>
public sealed class SeasonDeskTests
{
    private static readonly KnowledgeBase s_knowledge =
        KnowledgeFolder.Load(Path.Combine(ExpectedText.RepositoryFolder(), "rules")).Value!;

    private static readonly Advisor s_advisor = Advisor.Of(s_knowledge);

    [Fact]
    public void It_shows_the_plan_that_the_command_gives()
    {
        SeasonDesk desk = Desk("container-yard");
        SeasonPlan plan = desk.Plan!.Plan!;
        string lines = string.Join('\n', desk.Lines(120).Select(line => line.Text));
        Assert.Contains(plan.Applications[0].Name.Split('-')[0], lines, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Proven", lines, StringComparison.Ordinal);
        Assert.Contains("The label is the law", lines, StringComparison.Ordinal);
    }

    [Fact]
    public void Closing_the_week_of_an_application_moves_it_and_says_what_that_costs()
    {
        SeasonDesk desk = Desk("container-yard");
        desk.Move(desk.Plan!.Plan!.Applications[1].Week);
        decimal before = desk.Plan.Plan.Total;
        desk.ToggleWeek();
        Assert.DoesNotContain(desk.Plan.Plan!.Applications, one => one.Week == desk.Week);
        Assert.True(desk.Plan.Plan.Total >= before);
        Assert.Contains("closed by your wish", desk.AboutWeek().Text, StringComparison.Ordinal);
        Assert.Contains("1 week closed", desk.Lines(120)[0].Text, StringComparison.Ordinal);
        desk.ToggleWeek();
        Assert.Equal(before, desk.Plan.Plan!.Total);
    }

    [Fact]
    public void A_month_closes_and_opens_as_a_whole()
    {
        SeasonDesk desk = Desk("container-yard");
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
        SeasonDesk desk = Desk("container-yard");
        SeasonApplication first = desk.Plan!.Plan!.Applications[0];
        desk.Move(first.Week);
        desk.DropOrTakeBack();
        Assert.DoesNotContain(desk.Plan.Plan!.Applications, one => one.Name == first.Name);
        Assert.Contains("dearer than at first", string.Join(' ', desk.Lines(120).Select(line => line.Text)), StringComparison.Ordinal);
        desk.Move(52);
        while (desk.Plan.Plan!.Applications.Any(one => one.Week == desk.Week))
            desk.Move(-1);
        desk.DropOrTakeBack();
        Assert.Empty(desk.Plan.Case.Request.Dropped);
    }

    [Fact]
    public void Rotation_and_number_are_loosened_tightened_and_reset()
    {
        SeasonDesk desk = Desk("container-yard");
        desk.NextRotation();
        Assert.Equal(2, desk.Plan!.Case.Request.RunOfSite);
        desk.NextRotation();
        Assert.Null(desk.Plan.Case.Request.RunOfSite);
        Assert.Contains("no rotation", desk.Lines(120)[0].Text, StringComparison.Ordinal);
        for (int i = 0; i < 20; i++)
            desk.AllowMore(-1);
        Assert.Empty(desk.Plan.Plan!.Applications);
        Assert.Contains(desk.Lines(120), line => line.Text.StartsWith("At most 0 applications", StringComparison.Ordinal));
        desk.Reset();
        Assert.Equal(1, desk.Plan.Case.Request.RunOfSite);
        Assert.NotEmpty(desk.Plan.Plan!.Applications);
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
        desk.Move(1);
        desk.ToggleWeek();
        desk.DropOrTakeBack();
        desk.AllowMore(1);
        Assert.Null(desk.Strip);
        Assert.Empty(desk.Details(80));
        Assert.Equal("", desk.AboutWeek().Text);
    }

    [Fact]
    public void The_interview_stays_where_it_was()
    {
        InterviewSession session = Session("container-yard");
        string before = string.Join(',', session.Advice.Clear.Select(clear => clear.Action));
        _ = new SeasonDesk(session);
        session.GoToArea(0);
        session.GoToArea(session.Visit.Areas.Select((area, i) => (area, i)).Single(one => one.area.Id == "container-yard").i);
        Assert.Equal(before, string.Join(',', session.Advice.Clear.Select(clear => clear.Action)));
    }

    [Fact]
    public void No_line_is_wider_than_asked() =>
        Assert.All(Desk("container-yard").Lines(60).Concat(Desk("container-yard").Details(60)), line => Assert.True(line.Text.Length <= 60, line.Text));

    private static SeasonDesk Desk(string area) => new(Session(area));

    private static InterviewSession Session(string area)
    {
        Visit visit = s_knowledge.WorkedVisits.Single(worked => worked.Visit.Id == "demo-spring").Visit;
        var session = new InterviewSession(s_knowledge, new LiveAdviceSource(s_advisor), visit);
        session.GoToArea(visit.Areas.Select((one, i) => (one, i)).Single(one => one.one.Id == area).i);
        return session;
    }
}
