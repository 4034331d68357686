using Terminal.Gui.Input;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Screens;

/// <summary>The plan on the screen, of a visit that is planned in no time.</summary>
public sealed class PlanScreenTests
{
    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Cost_rows_and_what_can_be_done_stand_on_one_page(int width, int height)
    {
        using Bench bench = Planned(width, height);
        Assert.Contains(" a year for 10,000 pots", bench.Picture, StringComparison.Ordinal);
        foreach (
            string row in (string[])["> ", "Weed in summer", "Lay or change", "Hours a week", "Materials and", "Pots"]
        )
            Assert.Contains(row, bench.Picture, StringComparison.Ordinal);
        if (height >= 24)
            Assert.Contains("  Pots ", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("Left and Right: more and less often", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("The label is the law", bench.Picture, StringComparison.Ordinal);
        Assert.All(bench.Picture.Split('\n'), line => Assert.True(line.Length <= width, line));
        Assert.Contains("Esc", bench.Picture.TrimEnd().Split('\n')[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_year_is_planned_by_the_keyboard_and_its_wishes_stay()
    {
        using Bench bench = Planned(80, 24);
        string first = bench.Picture;
        bench.Press(Key.CursorDown, Key.CursorLeft).Settle();
        Assert.Contains("* Weed in summer", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("Planned anew", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Delete).Settle();
        Assert.DoesNotContain("* Weed in summer", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.End).Type("500").Press(Key.Enter).Settle();
        Assert.Contains(" a year for 500 pots", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Esc);
        Assert.DoesNotContain("Weed in summer", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.P.WithCtrl).Settle();
        Assert.Contains(" a year for 500 pots", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Z.WithCtrl).Settle().Type("u").Settle().Type("u").Settle();
        Assert.Contains(" a year for 10,000 pots", bench.Picture, StringComparison.Ordinal);
        Assert.Equal(Figures(first), Figures(bench.Picture));
    }

    [Fact]
    public void A_use_is_closed_dropped_and_kept_under_the_cursor()
    {
        using Bench bench = Planned(80, 24);
        bench.Press(Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorDown);
        Assert.Contains(">  Put on, week of", bench.Picture, StringComparison.Ordinal);
        bench.Type("k").Settle();
        Assert.Contains("must go on", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Space).Settle();
        Assert.Contains("* Closed, week of", bench.Picture, StringComparison.Ordinal);
        bench.Type("a").Settle();
        Assert.DoesNotContain("Closed, week of", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("All wishes taken back", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void Enter_opens_the_whole_plan_and_r_whether_it_stands()
    {
        using Bench bench = Planned(80, 24);
        bench.Press(Key.Enter);
        Assert.Contains("THROUGH THE YEAR", Pages(bench), StringComparison.Ordinal);
        bench.Press(Key.Esc).Type("r").Settle();
        Assert.Contains("draws the plan stays the cheapest", Pages(bench), StringComparison.Ordinal);
        bench.Press(Key.Esc, Key.F1);
        Assert.Contains("does it stand?", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Esc, Key.Esc);
        Assert.DoesNotContain("Weed in summer", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void The_help_of_the_interview_names_the_key() =>
        Assert.Contains(
            "Ctrl+P",
            new Bench(80, 40, session: Session()).Press(Key.F1).Picture,
            StringComparison.Ordinal
        );

    private static string Pages(Bench bench)
    {
        string all = bench.Picture;
        for (int i = 0; i < 6; i++)
            all += bench.Press(Key.PageDown).Picture;
        return string.Join(' ', all.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
    }

    // Without the word for the last change.
    private static string Figures(string picture) =>
        string.Join('\n', picture.Split('\n').Where(line => line.Contains('$', StringComparison.Ordinal)).Take(1));

    private static Bench Planned(int width, int height) =>
        new Bench(width, height, session: Session()).Press(Key.P.WithCtrl).Settle();

    private static InterviewSession Session() =>
        new(
            ShippedRules.Knowledge,
            new LiveAdviceSource(ShippedRules.Advisor),
            ShippedRules.Visit("nobody-licensed-and-no-tools")
        );
}
