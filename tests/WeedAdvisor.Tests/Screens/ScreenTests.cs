using System.Text.RegularExpressions;
using Terminal.Gui.Input;
using WeedAdvisor.Interview.Desks.Rates;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Screens;

namespace WeedAdvisor.Tests.Screens;

public sealed partial class ScreenTests
{
    [Fact]
    public void An_interview_is_done_by_the_keyboard_alone_from_empty_to_saved()
    {
        using var bench = new Bench();
        bench.Press(Key.F2, Key.Tab).Type("Mist house").Press(Key.Tab, Key.Tab, Key.Tab, Key.Enter, Key.Esc);
        bench.Press(Key.Enter);
        bench.Press(Key.CursorDown, Key.CursorDown, Key.Enter);
        bench.Press(Key.Enter);
        bench
            .Press(Key.Enter)
            .Type("liver")
            .Press(Key.Enter)
            .Press(Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.Enter)
            .Type("20")
            .Press(Key.Enter);
        bench.Press(Key.F8);
        bench.Press(Key.CursorDown, Key.Enter);
        while (bench.Session.Current is not null)
            bench.Press(Key.F4);
        bench.Press(Key.S.WithCtrl, Key.Enter);

        Visit saved = Assert.Single(bench.Store.Files).Value;
        VisitArea area = saved.Areas[0];
        Assert.Equal("Mist house", area.Name);
        Assert.Equal(new Answer.Words(WordSet.Of("propagation-house")), area.Answers["place"]);
        Assert.Equal(new Answer.Words(WordSet.Of("film-on")), area.Answers["cover"]);
        Assert.Equal(new Answer.Words(WordSet.Of("unrooted-cuttings")), area.Answers["stock"]);
        Assert.Equal([new WeedSeen("liverwort", "mature", 20)], area.Weeds!.Value.AsEnumerable());
        Assert.Equal(new Answer.Words(WordSet.Of("warm-south")), area.Answers["region"]);
        Assert.Equal(new Answer.NotKnown(), area.Answers["sides"]);
        Assert.True(bench.Session.IsSaved);
    }

    [Fact]
    public void A_weed_found_by_its_features_comes_back_to_the_picker_with_its_stage_to_tell()
    {
        using Bench bench = ScreenPictureTests.AtWeeds(new Bench());
        bench.Press(Key.Enter, Key.F9).Type("heart").Press(Key.Enter, Key.Enter, Key.Tab, Key.Enter);
        Assert.Contains("Picked: Creeping woodsorrel", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.CursorDown, Key.CursorDown, Key.Enter).Type("5").Press(Key.Enter);
        Assert.Equal([new WeedSeen("oxalis", "young", 5)], bench.Session.Area.Weeds!.Value.AsEnumerable());
    }

    [Fact]
    public void Ticks_stay_until_the_picker_is_closed_and_Esc_picks_nothing()
    {
        using Bench bench = ScreenPictureTests.AtWeeds(new Bench());
        bench.Press(Key.Enter, Key.F9).Type("sap").Press(Key.Enter, Key.Space, Key.Esc);
        Assert.Contains("Picked: none yet", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("2 weeds fit all of it", bench.Press(Key.F9).Picture, StringComparison.Ordinal);
        bench.Press(Key.Esc, Key.Esc, Key.Enter, Key.F9);
        Assert.Contains("5 weeds; tick what you see", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void The_presses_lead_to_the_next_feature_and_clear_the_ticks()
    {
        using Bench bench = ScreenPictureTests.AtWeeds(new Bench());
        bench.Press(Key.Enter, Key.F9, Key.Tab, Key.Tab, Key.Tab, Key.Enter, Key.Enter);
        Assert.Contains("[x] clearly hairy", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Enter);
        Assert.Contains("[-] clearly hairy", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Tab, Key.Tab, Key.Tab, Key.Enter);
        Assert.Contains("[ ] clearly hairy", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rate_sum_is_done_by_the_keyboard_and_stays_when_it_is_left()
    {
        using Bench bench = ScreenPictureTests.AtStrip(new Bench());
        bench
            .Type("40")
            .Press(Key.Enter, Key.CursorUp)
            .Type(" fl oz")
            .Press(Key.Tab)
            .Type("340.3125 ft")
            .Press(Key.Enter)
            .Type("12 in");
        Assert.Contains("Spray volume  40 gal/acre", bench.Picture, StringComparison.Ordinal);
        Assert.DoesNotContain("SOURCES", bench.Picture, StringComparison.Ordinal);
        for (int page = 0; page < 12 && !bench.Picture.Contains("SOURCES", StringComparison.Ordinal); page++)
            bench.Press(Key.PageDown);
        Assert.Contains("SOURCES", bench.Picture, StringComparison.Ordinal);
        Assert.DoesNotContain("RESULT", bench.Picture, StringComparison.Ordinal);
        bench.Press([.. Enumerable.Repeat(Key.PageUp, 12)]);
        Assert.Contains("RESULT", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Esc);
        Assert.Contains("(begun)", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Enter);
        Assert.Contains("Spray volume  40 gal/acre", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Esc, Key.Esc);
        Assert.Contains("F9 Rates", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_field_of_every_rate_sum_can_be_reached_and_seen()
    {
        using var bench = new Bench(60, 20);
        bench.Press(Key.F9);
        var desks = new RateDesks(bench.Session);
        foreach (var form in desks.Forms)
        {
            bench.Press(Key.Enter);
            foreach (var field in form.Fields)
            {
                Assert.Contains(
                    field.Label[..Math.Min(20, field.Label.Length)],
                    bench.Picture,
                    StringComparison.Ordinal
                );
                bench.Press(Key.Tab);
            }

            bench.Press(Key.Esc, Key.CursorDown);
        }
    }

    [Fact]
    public void A_blank_in_a_field_for_a_word_stands_for_the_next_word()
    {
        using Bench bench = ScreenPictureTests.AtStrip(new Bench());
        bench.Press(
            Key.CursorDown,
            Key.CursorDown,
            Key.CursorDown,
            Key.CursorDown,
            Key.CursorDown,
            Key.Space,
            Key.Space
        );
        Assert.Contains(" handgun ", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void Esc_never_loses_answers()
    {
        using var bench = new Bench();
        bench.Press(Key.Space, Key.Esc);
        Assert.False(bench.HasLeft);
        bench.Press(Key.Esc);
        Assert.False(bench.HasLeft);
        bench.Press(Key.Esc, Key.CursorDown, Key.Enter);
        Assert.True(bench.HasLeft);
        Assert.True(bench.Keeper.Kept!.Areas[0].Answers.ContainsKey("place"));
    }

    [Fact]
    public void Save_and_leave_leaves_once_it_is_saved()
    {
        using var bench = new Bench();
        bench.Press(Key.Space, Key.Q.WithCtrl, Key.Enter);
        bench.Store.Refuses = "no such folder";
        bench.Press(Key.Enter);
        Assert.False(bench.HasLeft);
        Assert.Contains("no such folder", bench.Picture, StringComparison.Ordinal);
        bench.Store.Refuses = null;
        bench.Press(Key.Enter).Settle();
        Assert.True(bench.HasLeft);
        Assert.Single(bench.Store.Files);
    }

    [Fact]
    public void Another_file_is_not_replaced_without_a_word()
    {
        using var bench = new Bench();
        Visit other = ScreenPictureTests.MistHouse();
        bench.Store.Files["visit-2026-04-14.yaml"] = other;
        bench.Press(Key.Space, Key.S.WithCtrl, Key.Enter);
        Assert.Contains("exists already", bench.Picture, StringComparison.Ordinal);
        Assert.Same(other, bench.Store.Files["visit-2026-04-14.yaml"]);
        bench.Press(Key.Enter);
        Assert.Same(bench.Session.Visit, bench.Store.Files["visit-2026-04-14.yaml"]);
    }

    [Fact]
    public void Letters_typed_in_a_search_fire_nothing()
    {
        using var bench = ScreenPictureTests.AtWeeds(new Bench());
        bench.Press(Key.Enter).Type("qxsnbadclef ");
        Assert.False(bench.HasLeft);
        Assert.Contains("qxsnbadclef", bench.Picture, StringComparison.Ordinal);
        Assert.Null(bench.Session.Area.Weeds);
    }

    [Fact]
    public void Letters_on_a_list_fire_nothing()
    {
        using var bench = new Bench();
        string before = bench.Picture;
        bench.Type("abcdefghijklmnopqrstuvwxyz0123456789");
        Assert.Equal(before, bench.Picture);
    }

    [Fact]
    public void The_advice_follows_every_answer()
    {
        using var bench = new Bench(120, 40);
        Assert.Contains("Waiting for an answer (1)", bench.Picture, StringComparison.Ordinal);
        bench.Session.Say("cover", new Answer.Words(WordSet.Of("film-on")));
        bench.Settle();
        Assert.Contains("Barred here (1)", bench.Picture, StringComparison.Ordinal);
        Assert.DoesNotContain("Waiting for an answer", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void A_typed_number_is_taken_over_by_every_way_on()
    {
        using var bench = ScreenPictureTests.At(new Bench(), "mulch-depth");
        bench.Type("3").Press(Key.F8);
        Assert.Equal(new Answer.Number(3), bench.Session.Area.Answers["mulch-depth"]);
    }

    [Fact]
    public void A_weed_is_changed_and_taken_out()
    {
        using var bench = ScreenPictureTests.AtWeeds(new Bench(visit: ScreenPictureTests.MistHouse()));
        bench
            .Press(Key.Home, Key.Enter, Key.Tab, Key.Tab, Key.Tab, Key.Backspace, Key.Backspace)
            .Type("35")
            .Press(Key.Enter);
        Assert.Equal(new WeedSeen("liverwort", "mature", 35), bench.Session.Area.Weeds!.Value[0]);
        bench.Press(Key.Home, Key.Delete);
        Assert.Equal([new WeedSeen("oxalis", null, null)], bench.Session.Area.Weeds!.Value.AsEnumerable());
    }

    [Fact]
    public void Broken_off_interviews_are_offered_one_after_another_until_one_is_taken()
    {
        using var bench = new Bench(offers: bench =>
            [
                bench.Offer("The first.", ScreenPictureTests.MistHouse()),
                bench.Offer("The second.", ScreenPictureTests.MistHouse()),
            ]
        );
        Assert.Contains("The first.", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.CursorDown, Key.Enter);
        Assert.Contains("It is put aside in /state/declined-1.yaml.", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("The second.", bench.Picture, StringComparison.Ordinal);
        Assert.Equal("Area 1", bench.Session.Area.Name);
        bench.Press(Key.Enter);
        Assert.Equal("Mist house", bench.Session.Area.Name);
        Assert.False(bench.Session.IsSaved);
        Assert.Equal(1, bench.AsideTimes);
    }

    [Fact]
    public void Where_the_last_declined_interview_is_is_told()
    {
        using var bench = new Bench(recovered: ScreenPictureTests.MistHouse());
        bench.Press(Key.CursorDown, Key.Enter);
        Assert.Contains("It is put aside in /state/declined-1.yaml.", bench.Picture, StringComparison.Ordinal);
        Assert.Equal("Area 1", bench.Session.Area.Name);
    }

    [Fact]
    public void Esc_leaves_a_broken_off_interview_for_the_next_start()
    {
        using var bench = new Bench(recovered: ScreenPictureTests.MistHouse());
        bench.Press(Key.Esc);
        Assert.Equal("Area 1", bench.Session.Area.Name);
        Assert.Equal(0, bench.AsideTimes);
    }

    [Fact]
    public void A_file_that_others_have_changed_is_asked_for_before_it_is_written_over()
    {
        using var bench = new Bench();
        bench.Press(Key.Space, Key.S.WithCtrl, Key.Enter).Settle();
        Visit saved = bench.Session.Visit;
        bench.Store.Changed.Add("visit-2026-04-14.yaml");
        bench.Press(Key.CursorDown, Key.Space, Key.S.WithCtrl);
        Assert.Contains("was changed by another window or program", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Esc);
        Assert.Same(saved, bench.Store.Files["visit-2026-04-14.yaml"]);
        Assert.False(bench.Session.IsSaved);

        bench.Press(Key.S.WithCtrl, Key.Enter).Type("b").Press(Key.Enter);
        Assert.Same(saved, bench.Store.Files["visit-2026-04-14.yaml"]);
        Assert.NotEqual("visit-2026-04-14.yaml", bench.Session.FilePath);
        Assert.Same(bench.Session.Visit, bench.Store.Files[bench.Session.FilePath!]);
    }

    [Fact]
    public void Writing_over_a_file_that_others_have_changed_is_one_of_the_ways_and_on_leaving_a_second_Enter()
    {
        using (var bench = new Bench())
        {
            bench.Press(Key.Space, Key.S.WithCtrl, Key.Enter).Settle();
            bench.Store.Changed.Add("visit-2026-04-14.yaml");
            bench.Press(Key.CursorDown, Key.Space, Key.S.WithCtrl, Key.CursorDown, Key.Enter);
            Assert.True(bench.Session.IsSaved);
            Assert.Same(bench.Session.Visit, bench.Store.Files["visit-2026-04-14.yaml"]);
        }

        using (var bench = new Bench())
        {
            bench.Press(Key.Space, Key.S.WithCtrl, Key.Enter).Settle();
            bench.Store.Changed.Add("visit-2026-04-14.yaml");
            bench.Press(Key.CursorDown, Key.Space, Key.Q.WithCtrl, Key.Enter, Key.Enter).Settle();
            Assert.Contains("Enter again writes over it", bench.Picture, StringComparison.Ordinal);
            Assert.False(bench.HasLeft);
            bench.Press(Key.Enter).Settle();
            Assert.True(bench.HasLeft);
            Assert.True(bench.Session.IsSaved);
        }
    }

    [Fact]
    public void What_has_to_be_told_of_a_save_is_told_before_the_program_is_left()
    {
        using var bench = new Bench();
        bench.Store.Note = "The file had been deleted.";
        bench.Press(Key.Space, Key.Q.WithCtrl, Key.Enter, Key.Enter).Settle();
        Assert.Contains(
            "Saved to visit-2026-04-14.yaml. The file had been deleted.",
            bench.Picture,
            StringComparison.Ordinal
        );
        Assert.False(bench.HasLeft);
        bench.Press(Key.Enter);
        Assert.True(bench.HasLeft);
    }

    [Fact]
    public void Opening_tells_what_is_wrong_with_a_file_and_opens_a_good_one()
    {
        using var bench = new Bench();
        bench.Store.Files["mist.yaml"] = ScreenPictureTests.MistHouse();
        bench.Press(Key.O.WithCtrl).Type("nowhere.yaml").Press(Key.Enter);
        Assert.Contains("there is no such file", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.End);
        for (int i = 0; i < "nowhere.yaml".Length; i++)
            bench.Press(Key.Backspace);
        bench.Type("mist.yaml").Press(Key.Enter);
        Assert.Equal("Mist house", bench.Session.Area.Name);
        Assert.Contains("Mist house (1 of 2)", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_breaks_at_any_size()
    {
        using var bench = new Bench(visit: ScreenPictureTests.MistHouse());
        foreach (
            (int width, int height) in new[]
            {
                (200, 60),
                (100, 30),
                (76, 20),
                (75, 20),
                (60, 20),
                (59, 19),
                (40, 12),
                (1, 1),
                (80, 24),
            }
        )
        {
            bench.Size(width, height);
            bool tooSmall = width < 60 || height < 20;
            if (width >= 40)
                Assert.Equal(tooSmall, bench.Picture.Contains("weedadvisor ask", StringComparison.Ordinal));
        }

        Assert.Contains("Mist house (1 of 2)", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void The_units_of_a_visit_are_chosen_with_the_visit_and_undone_like_any_edit()
    {
        using var bench = new Bench();
        bench.Press(Key.F5, Key.Tab, Key.Tab, Key.Tab).Type("uz").Press(Key.Enter);
        Assert.Contains("Units are metric, us or both, not 'uz'.", bench.Picture, StringComparison.Ordinal);
        Assert.Null(bench.Session.Visit.Units);
        bench.Press(Key.Backspace).Type("s").Press(Key.Enter);
        Assert.Equal(UnitsWanted.Us, bench.Session.Visit.Units);
        Assert.Equal(UnitsWanted.Us, bench.Session.Units);
        bench.Press(Key.Z.WithCtrl);
        Assert.Null(bench.Session.Visit.Units);
    }

    [Fact]
    public void Without_colour_no_colour_is_sent()
    {
        using var bench = new Bench(plain: true, visit: ScreenPictureTests.MistHouse());
        Assert.Empty(Colours().Matches(bench.Ansi));
        bench.Press(Key.F6, Key.F1);
        Assert.Empty(Colours().Matches(bench.Ansi));
        bench.Press(Key.Esc, Key.F5);
        Assert.Empty(Colours().Matches(bench.Ansi));
        ScreenPictureTests.AtWeeds(bench.Press(Key.Esc)).Press(Key.Enter).Type("li");
        Assert.Empty(Colours().Matches(bench.Ansi));
    }

    [Fact]
    public void With_colour_the_cursor_line_stands_out()
    {
        using var bench = new Bench();
        Assert.NotEmpty(Colours().Matches(bench.Ansi));
    }

    [Theory]
    [InlineData("1", "xterm", true)]
    [InlineData("", "xterm", false)]
    [InlineData(null, "xterm-256color", false)]
    [InlineData(null, "dumb", true)]
    public void No_colour_is_wanted_when_the_environment_says_so(string? noColour, string term, bool wanted) =>
        Assert.Equal(wanted, ScreenSettings.WantsNoColour(name => name == "NO_COLOR" ? noColour : term));

    /// <summary>
    /// Any select-graphic-rendition sequence that sets a colour: 30-37, 38, 40-47, 48, 90-97, 100-107.
    /// </summary>
    [GeneratedRegex(@"\x1b\[(?:[0-9]+;)*(?:3[0-8]|4[0-8]|9[0-7]|10[0-7])(?:[;:][0-9]*)*m")]
    private static partial Regex Colours();
}
