using Terminal.Gui.Input;
using WeedAdvisor.Interview.Desks.Costs;
using WeedAdvisor.Tests.Interview;

namespace WeedAdvisor.Tests.Screens;

public sealed class CostScreenTests
{
    [Fact]
    public void A_number_is_moved_and_typed_by_the_keyboard_and_stays_when_the_page_is_left()
    {
        using Bench bench = Open();
        bench.Press(Key.CursorRight);
        Says(bench, "15000");
        bench.Press(Key.CursorLeft, new Key('-'), new Key('+'));
        Says(bench, "10000");
        bench.Press(Key.Tab).Type("24");
        Says(bench, "24          [");
        bench.Press(Key.Esc, Key.E.WithCtrl);
        Says(bench, "24          [");
    }

    [Fact]
    public void A_way_opens_with_Enter_and_Esc_leads_back_to_it()
    {
        using Bench bench = Open();
        bench.Press(Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorDown);
        string before = bench.Picture;
        Says(bench, "What it costs:");
        bench.Press(Key.Enter);
        Says(bench, "Against today's way: ");
        bench.Press(Key.Esc);
        Assert.Equal(before, bench.Picture);
        bench.Press(Key.CursorDown, Key.Enter);
        Says(bench, "COVER WITH PINE BARK MINI-NUGGETS AND ");
        bench.Press(Key.Esc, Key.Esc);
        Says(bench, "Q Leave");
    }

    [Fact]
    public void Up_leads_from_the_result_back_to_the_numbers()
    {
        using Bench bench = Open();
        bench.Press([.. Enumerable.Repeat(Key.CursorDown, 5), Key.Home, Key.CursorUp, new Key('5')]);
        Says(bench, "Stopped by what you apply, % 5 ");
    }

    [Fact]
    public void The_result_is_read_on_from_any_field()
    {
        using Bench bench = Open();
        bench.Press([.. Enumerable.Repeat(Key.PageDown, 4)]);
        Says(bench, "* today's way.");
        bench.Press(Key.CursorRight);
        Says(bench, "* today's way.");
        bench.Press([.. Enumerable.Repeat(Key.PageUp, 4)]);
        Says(bench, "seeds shed");
    }

    [Fact]
    public void In_the_smallest_window_numbers_and_result_are_there()
    {
        using var bench = new Bench(60, 20, session: DemoInterview.Alone());
        bench.Press(Key.E.WithCtrl);
        Says(bench, "Stopped by what you apply");
        Says(bench, "Weeks     hours");
    }

    // The bars used to push the numbers off the screen.
    [Fact]
    public void In_the_smallest_window_every_number_that_is_counted_with_is_told()
    {
        using Bench bench = new Bench(60, 20, session: DemoInterview.Alone()).Press(Key.E.WithCtrl);
        var desk = new CostDesk(DemoInterview.Alone());
        foreach (CostField field in CostField.All)
            Says(bench, desk.Beside(field).Text.Split("] ")[1]);
    }

    [Fact]
    public void What_is_typed_keeps_its_bar_in_the_smallest_window()
    {
        using var bench = new Bench(60, 20, session: DemoInterview.Alone());
        bench.Press(Key.E.WithCtrl).Type("500");
        Says(bench, "500         [");
    }

    private static Bench Open() => new Bench(session: DemoInterview.Alone()).Press(Key.E.WithCtrl);

    private static void Says(Bench bench, string text) =>
        Assert.Contains(text, bench.Picture, StringComparison.Ordinal);
}
