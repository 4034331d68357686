using Terminal.Gui.Input;
using WeedAdvisor.Interview.Desks.Season;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Tests.Interview;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Screens;

public sealed class SeasonScreenTests
{
    // Its year has fewer choices than that of the yard.
    private const string Bed = "liner-bed";

    [Fact]
    public void The_sheet_says_that_it_is_at_work_before_the_plan_stands()
    {
        using Bench bench = At("container-yard", 80, 24);
        Assert.Contains("one moment", bench.Press(Key.Y.WithCtrl).Picture, StringComparison.Ordinal);
        Assert.DoesNotContain("spotted spurge", bench.Picture, StringComparison.Ordinal);
        bench.Settle();
        Assert.Contains("spotted spurge", bench.Picture, StringComparison.Ordinal);
        Assert.DoesNotContain("one moment", bench.Picture, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_strip_and_the_applications_stand_on_one_page(int width, int height)
    {
        using Bench bench = Planned(width, height);
        string[] lines = bench.Picture.Split('\n');
        Assert.Contains("1000 pots: $", lines[1], StringComparison.Ordinal);
        var desk = new SeasonDesk(DemoInterview.At(Bed));
        desk.Read();
        string weeks = string.Concat(desk.Strip!.Rows[0].Weeks.Select(WeedAdvisor.Reports.Season.StripText.Character));
        Assert.Contains(lines, line => line.EndsWith(weeks, StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith(" > A ", StringComparison.Ordinal));
        Assert.Contains("# held", bench.Picture, StringComparison.Ordinal);
        if (height >= 24)
            Assert.All(desk.Strip.Rows, row => Assert.Contains(row.Name, bench.Picture, StringComparison.Ordinal));
        else
            Assert.Contains("weeds more", bench.Picture, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Down_leads_to_every_application_and_it_can_be_seen(int width, int height)
    {
        using Bench bench = Planned(width, height);
        var desk = new SeasonDesk(DemoInterview.At(Bed));
        desk.Read();
        Assert.All(desk.Strip!.Letters, letter =>
        {
            Assert.Contains($"\n > {letter} ", bench.Picture, StringComparison.Ordinal);
            bench.Press(Key.CursorDown);
        });
    }

    [Fact]
    public void A_year_is_planned_by_the_keyboard_and_its_wishes_stay()
    {
        using Bench bench = Planned(80, 24, "container-yard");
        string first = bench.Picture;
        bench.Press(Key.Space);
        Assert.Contains("closed. $", bench.Picture, StringComparison.Ordinal);
        Assert.Contains(
            " x",
            bench.Picture.Split('\n').Single(line => line.StartsWith(" goes on", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
        bench.Press(Key.CursorDown).Type("d");
        Assert.Contains(" dropped. $", bench.Picture, StringComparison.Ordinal);
        bench.Type("r");
        Assert.Contains("rotation 2", bench.Picture, StringComparison.Ordinal);
        bench.Type("-");
        Assert.DoesNotContain("at most 6", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Esc);
        Assert.DoesNotContain("\n goes on", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Y.WithCtrl);
        Assert.Contains("rotation 2", bench.Picture, StringComparison.Ordinal);
        bench.Type("0");
        foreach (int line in new[] { 0, 1, 4, 5, 10 })
            Assert.Equal(first.Split('\n')[line], bench.Picture.Split('\n')[line]);
    }

    [Fact]
    public void All_work_is_one_key_away_and_Esc_leads_back()
    {
        using Bench bench = Planned(80, 24);
        bench.Press(Key.Enter);
        Assert.Contains("All work, by day", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.End);
        Assert.DoesNotContain("All work, by day", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Esc);
        Assert.Contains("goes on", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.F1);
        Assert.Contains("drop the product", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Esc);
        Assert.Contains("goes on", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void Left_before_it_is_read_the_sheet_does_no_harm()
    {
        using Bench bench = At(Bed, 80, 24);
        bench.Press(Key.Y.WithCtrl, Key.Esc).Settle();
        Assert.DoesNotContain("\n goes on", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Y.WithCtrl).Settle();
        Assert.Contains("goes on", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_an_answer_is_missing_the_sheet_says_which()
    {
        using var bench = new Bench(
            session: new InterviewSession(
                ShippedRules.Knowledge,
                new LiveAdviceSource(ShippedRules.Advisor),
                VisitEdits.Begin(ShippedRules.Demo.Date)
            )
        );
        bench.Press(Key.Y.WithCtrl).Settle();
        Assert.Contains("cannot be planned yet", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("no weed is named", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.CursorRight, Key.Space, Key.Enter).Type("mdkr+-u0");
        Assert.Contains("no weed is named", bench.Picture, StringComparison.Ordinal);
    }

    private static Bench Planned(int width, int height, string area = Bed) =>
        At(area, width, height).Press(Key.Y.WithCtrl).Settle();

    private static Bench At(string area, int width, int height) => new(width, height, session: DemoInterview.At(area));
}
