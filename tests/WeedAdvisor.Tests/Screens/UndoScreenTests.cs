using Terminal.Gui.App;
using Terminal.Gui.Input;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Tests.Screens;

public sealed class UndoScreenTests
{
    [Fact]
    public void Ctrl_Z_undoes_Ctrl_R_does_it_again_and_both_say_what()
    {
        using var bench = new Bench();
        bench.Press(Key.CursorDown, Key.Enter);
        Assert.Contains("What is over it?", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Z.WithCtrl);
        Assert.Contains("undone: place of Area 1", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("What kind of place is it?", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("( ) container yard", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.R.WithCtrl);
        Assert.Contains("done again: place of Area 1", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("(x) container yard", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.R.WithCtrl);
        Assert.Contains("nothing to do again", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void No_key_puts_the_program_to_sleep_in_the_shell()
    {
        using var bench = new Bench();
        Assert.Contains(Key.Z.WithCtrl, Application.GetDefaultKeys(Command.Suspend));
        Assert.Empty(bench.KeysOf(Command.Suspend));
    }

    [Fact]
    public void A_number_typed_and_not_yet_given_is_what_Ctrl_Z_takes_back_first()
    {
        using Bench bench = ScreenPictureTests.At(new Bench(), "mulch-depth");
        bench.Type("3").Press(Key.F8, Key.F7).Press(Key.Backspace).Type("28").Press(Key.Z.WithCtrl);
        Assert.Equal(new Answer.Number(3), bench.Session.Area.Answers["mulch-depth"]);
        Assert.DoesNotContain("28", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Z.WithCtrl);
        Assert.False(bench.Session.Area.Answers.ContainsKey("mulch-depth"));
    }

    [Fact]
    public void Over_a_page_that_works_on_a_part_of_the_visit_nothing_is_undone()
    {
        using Bench bench = ScreenPictureTests.AtWeeds(new Bench(visit: ScreenPictureTests.MistHouse()));
        bench.Press(Key.Home, Key.Delete, Key.Home, Key.Enter, Key.Z.WithCtrl);
        Assert.Contains("Esc closes this page first", bench.Picture, StringComparison.Ordinal);
        Assert.Single(bench.Session.Area.Weeds!.Value);
        bench.Press(Key.Esc, Key.Z.WithCtrl);
        Assert.Equal(2, bench.Session.Area.Weeds!.Value.Length);
    }

    [Fact]
    public void Removing_an_area_asks_names_what_goes_and_removes_the_one_under_the_mark()
    {
        using var bench = new Bench(visit: ScreenPictureTests.MistHouse());
        bench.Press(Key.F2);
        Assert.Contains("> Mist house (here)", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.CursorDown);
        bench.Press([.. Enumerable.Repeat(Key.Tab, 5)]);
        Assert.Contains("> Container yard", bench.Picture, StringComparison.Ordinal);
        bench.Press(
            Key.Tab.WithShift,
            Key.Tab.WithShift,
            Key.Tab.WithShift,
            Key.Tab.WithShift,
            Key.Tab.WithShift,
            Key.CursorUp
        );
        bench.Press([.. Enumerable.Repeat(Key.Tab, 5)]).Press(Key.Enter);
        Assert.Contains("Remove Mist house?", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("4 answers and 2 weeds", bench.Picture, StringComparison.Ordinal);
        Assert.Equal(2, bench.Session.Visit.Areas.Length);
        bench.Press(Key.CursorDown, Key.Enter);
        Assert.Equal("Container yard", Assert.Single(bench.Session.Visit.Areas).Name);
        Assert.Contains("Ctrl+Z brings it back", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Z.WithCtrl);
        Assert.Contains("> Mist house (here)", bench.Picture, StringComparison.Ordinal);
        Assert.Equal(2, bench.Session.Visit.Areas[0].Weeds!.Value.Length);
    }

    [Fact]
    public void Enter_held_down_on_Remove_keeps_every_answer()
    {
        using var bench = new Bench(visit: ScreenPictureTests.MistHouse());
        string before = VisitText.Of(bench.Session.Visit);
        bench.Press(Key.F2).Press([.. Enumerable.Repeat(Key.Tab, 5)]);
        bench.Press(Key.Enter, Key.Enter);
        Assert.Equal(before, VisitText.Of(bench.Session.Visit));
        Assert.Null(bench.Keeper.Kept);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Dont_know_and_Clear_ask_before_they_drop_a_list(bool dontKnow)
    {
        using Bench bench = ScreenPictureTests.AtWeeds(new Bench(visit: ScreenPictureTests.MistHouse()));
        if (!dontKnow)
            bench.Press(Key.Tab, Key.Tab, Key.Tab);
        bench.Press(dontKnow ? Key.F4 : Key.Enter);
        Assert.Contains("Liverwort, Creeping woodsorrel", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Enter);
        Assert.Equal(2, bench.Session.Area.Weeds!.Value.Length);
        if (!dontKnow)
            bench.Press(Key.Tab, Key.Tab, Key.Tab);
        bench.Press(dontKnow ? Key.F4 : Key.Enter).Press(Key.CursorDown, Key.Enter);
        Assert.Null(bench.Session.Area.Weeds);
        bench.Press(Key.Z.WithCtrl);
        Assert.Equal(2, bench.Session.Area.Weeds!.Value.Length);
        Assert.Equal("weeds", bench.Session.Current?.Id);
    }

    [Fact]
    public void One_entry_is_dropped_without_a_question()
    {
        using Bench bench = ScreenPictureTests.AtWeeds(new Bench(visit: ScreenPictureTests.MistHouse()));
        bench.Press(Key.Home, Key.Delete, Key.F4);
        Assert.Null(bench.Session.Area.Weeds);
    }

    [Fact]
    public void None_of_these_asks_before_it_drops_what_is_ticked()
    {
        using Bench bench = ScreenPictureTests.At(new Bench(), "equipment");
        bench.Press(Key.Space, Key.End, Key.Space);
        Assert.Contains("This takes out: hand-held spreader", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.CursorDown, Key.Enter);
        Assert.Equal(new Answer.Words(WordSet.Empty), bench.Session.Area.Answers["equipment"]);
    }

    [Fact]
    public void A_name_that_fits_several_is_not_taken_until_it_is_chosen()
    {
        using Bench bench = ScreenPictureTests.AtWeeds(new Bench());
        bench.Press(Key.Enter).Type("spurge").Press(Key.Enter);
        Assert.Contains("Picked: none yet", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("2 fit.", bench.Picture, StringComparison.Ordinal);
        Assert.Contains(">Prostrate spurge", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("Spotted spurge mostly", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Enter);
        Assert.Contains("Picked: Prostrate spurge", bench.Picture, StringComparison.Ordinal);
        Assert.DoesNotContain("2 fit.", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void Enter_with_nothing_typed_takes_nothing()
    {
        using Bench bench = ScreenPictureTests.AtWeeds(new Bench());
        bench.Press(Key.Enter, Key.Enter);
        Assert.Contains("Picked: none yet", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void Dont_know_is_counted_apart_and_offered_again_at_the_end()
    {
        using var bench = new Bench();
        while (bench.Session.Current is not null)
            bench.Press(Key.F4);
        int notKnown = bench.Session.Progress.NotKnown;
        Assert.Equal(0, bench.Session.Progress.Answered);
        Assert.Contains($"0 of {notKnown} answered, {notKnown} not known", bench.Picture, StringComparison.Ordinal);
        Assert.DoesNotContain("No open answer", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Enter);
        Assert.Equal("place", bench.Session.Current?.Id);
        bench.Press(Key.Enter, Key.F8, Key.F4);
        Assert.Equal("weeds", bench.Session.Current?.Id);
        bench.Press(Key.F8, Key.F8);
        Assert.Null(bench.Session.Current);
        Assert.Equal("propagation-house", bench.Session.Area.WordOf("place"));
        Assert.Equal(notKnown - 1, bench.Session.Progress.NotKnown);
    }
}
