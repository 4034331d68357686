using Terminal.Gui.Input;

namespace WeedAdvisor.Tests.Screens;

/// <summary>A class at the screen: steps, the trainee's own order, how it agrees.</summary>
public sealed class LessonScreenTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void A_trainee_puts_the_work_in_order_and_sees_how_it_agrees(int width, int height)
    {
        using Bench bench = Lesson(width, height);
        Assert.Contains("STEP 1 OF", bench.Picture, StringComparison.Ordinal);

        bench.Press(Key.O);
        Assert.Contains("in which order?", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Enter, Key.CursorDown, Key.Enter);
        Assert.Contains(" 1. ", bench.Picture, StringComparison.Ordinal);
        Assert.Contains(" 2. ", bench.Picture, StringComparison.Ordinal);

        bench.Press(Key.S);
        Assert.Contains("Agreement with the advice", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("THE ADVICE HAS FIRST", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_is_taken_back_and_the_others_close_up()
    {
        using Bench bench = Lesson(80, 24);
        bench.Press(Key.O, Key.Enter, Key.CursorDown, Key.Enter, Key.CursorUp, Key.Enter);
        Assert.Contains(" 1. ", bench.Picture, StringComparison.Ordinal);
        Assert.DoesNotContain(" 2. ", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_named_has_no_score()
    {
        using Bench bench = Lesson(80, 24);
        bench.Press(Key.O, Key.S);
        Assert.Contains("in which order?", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void Esc_goes_back_page_by_page_and_the_lesson_stays_where_it_was()
    {
        using Bench bench = Lesson(80, 24);
        string second = bench.Press(Key.Enter).Picture;
        bench.Press(Key.O, Key.Enter, Key.S);
        bench.Press(Key.Esc);
        Assert.Contains("in which order?", bench.Picture, StringComparison.Ordinal);
        Assert.Equal(second, bench.Press(Key.Esc).Picture);
        Assert.Contains("Enter begin", bench.Press(Key.Esc).Picture, StringComparison.Ordinal);
    }

    private static Bench Lesson(int width, int height)
    {
        var bench = new Bench(width, height);
        bench.Press(Key.T.WithCtrl, Key.Enter);
        return bench;
    }
}
