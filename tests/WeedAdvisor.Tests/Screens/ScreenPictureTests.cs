using Terminal.Gui.Input;
using WeedAdvisor.Golden;
using WeedAdvisor.Interview.Desks.Rates;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Tests.Interview;
using WeedAdvisor.Tests.Interview.Desks;

namespace WeedAdvisor.Tests.Screens;

public sealed class ScreenPictureTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Screen_first_question(int width, int height) => Matches(new Bench(width, height));

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Screen_advice_under_film(int width, int height) =>
        Matches(new Bench(width, height, visit: MistHouse()).Press(Key.F6, Key.End));

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Screen_weed_picker(int width, int height) =>
        Matches(
            AtWeeds(new Bench(width, height))
                .Press(Key.Enter)
                .Type("spur")
                .Press(Key.CursorDown, Key.CursorDown, Key.Enter)
        );

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Screen_find_by_features(int width, int height) =>
        Matches(
            AtWeeds(new Bench(width, height))
                .Press(Key.Enter, Key.F9)
                .Type("sap")
                .Press(Key.Enter, Key.Enter)
                .Press(Key.Tab.WithShift, Key.Backspace, Key.Backspace, Key.Backspace)
                .Type("blotch")
                .Press(Key.Enter, Key.Enter, Key.Enter, Key.Tab, Key.CursorDown)
        );

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Screen_find_by_features_at_first(int width, int height) =>
        Matches(AtWeeds(new Bench(width, height)).Press(Key.Enter, Key.F9, Key.CursorDown));

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Screen_earlier_application(int width, int height) =>
        Matches(
            At(new Bench(width, height), "past").Press(Key.Enter).Type("pendi").Press(Key.Enter).Type("2026-03-01")
        );

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Screen_rate_sum(int width, int height) =>
        Matches(
            AtStrip(new Bench(width, height))
                .Type("40 fl oz")
                .Press(Key.Enter)
                .Type("56.7 ft")
                .Press(Key.Enter)
                .Type("6 ft")
        );

    [Fact]
    public void Screen_rate_problem() => Matches(AtStrip(new Bench()).Type("40").Press(Key.Enter).Type("56.7 lb"));

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Screen_costs(int width, int height) =>
        Matches(
            new Bench(width, height, session: DemoInterview.Alone())
                .Press(Key.E.WithCtrl, Key.CursorRight, Key.CursorDown)
                .Type("21.50")
        );

    [Fact]
    public void Screen_costs_wrong_number() =>
        Matches(new Bench(session: DemoInterview.Alone()).Press(Key.E.WithCtrl).Type("many"));

    [Fact]
    public void Screen_costs_way() =>
        Matches(new Bench(session: DemoInterview.Alone()).Press([Key.E.WithCtrl, .. Enumerable.Repeat(Key.Enter, 6)]));

    [Fact]
    public void Screen_costs_refused() =>
        Matches(new Bench(session: DemoInterview.Alone(area: "bark-pile")).Press(Key.E.WithCtrl));

    [Fact]
    public void Screen_reasons() => Matches(new Bench(visit: MistHouse()).Press(Key.F6, Key.Enter, Key.Space));

    [Fact]
    public void Screen_what_if() => Matches(new Bench(visit: MistHouse()).Press(Key.CursorDown, Key.W.WithCtrl));

    [Fact]
    public void Screen_lesson() =>
        Matches(
            new Bench()
                .Press(Key.T.WithCtrl, Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorDown)
                .Press(Key.Enter, Key.Enter)
        );

    [Fact]
    public void Screen_areas() => Matches(new Bench(visit: MistHouse()).Press(Key.F2));

    [Fact]
    public void Screen_questions() => Matches(new Bench(visit: MistHouse()).Press(Key.F3));

    [Fact]
    public void Screen_keys() => Matches(new Bench().Press(Key.F1));

    [Fact]
    public void Screen_leave() => Matches(new Bench().Press(Key.Space, Key.Esc));

    [Fact]
    public void Screen_several_answers() =>
        Matches(At(new Bench(), "equipment").Press(Key.Enter, Key.CursorDown, Key.Enter));

    [Fact]
    public void Screen_wrong_number() => Matches(At(new Bench(), "mulch-depth").Type("45").Press(Key.Enter));

    [Fact]
    public void Screen_narrow_question() => Matches(new Bench(60, 20));

    [Fact]
    public void Screen_narrow_advice() => Matches(new Bench(60, 20).Press(Key.F6));

    [Fact]
    public void Screen_too_small() => Matches(new Bench(50, 12));

    [Fact]
    public void Screen_broken_off() => Matches(new Bench(recovered: MistHouse()));

    [Fact]
    public void Screen_end_page()
    {
        var bench = new Bench(visit: MistHouse());
        while (bench.Session.Current is not null)
            bench.Press(Key.F4);
        Matches(bench);
    }

    internal static Bench AtWeeds(Bench bench) => At(bench, "weeds");

    internal static Bench AtStrip(Bench bench) =>
        bench.Press([
            Key.F9,
            .. Enumerable.Repeat(Key.CursorDown, new RateDesks(bench.Session).Forms.IndexOf(RateDeskTests.StripForm)),
            Key.Enter,
        ]);

    internal static Bench At(Bench bench, string question)
    {
        if (question == "mulch-depth")
            bench.Session.Say("stock", new Answer.Words(WordSet.Of("established")));
        bench.Session.GoTo(SmallTrade.Question(question));
        return bench.Press(Key.F6, Key.F6);
    }

    internal static Visit MistHouse()
    {
        Visit visit = VisitEdits
            .Begin(new DateOnly(2026, 4, 14))
            .WithAreaNamed(0, "Mist house")
            .WithNewArea("Container yard");
        VisitArea area = visit
            .Areas[0]
            .WithAnswer("place", new Answer.Words(WordSet.Of("propagation-house")))
            .WithAnswer("cover", new Answer.Words(WordSet.Of("film-on")))
            .WithAnswer("stock", new Answer.Words(WordSet.Of("unrooted-cuttings")))
            .WithAnswer("surface-moisture", new Answer.Words(WordSet.Of("wet")))
            .WithWeed(new WeedSeen("liverwort", "mature", 20))
            .WithWeed(new WeedSeen("oxalis", null, null));
        return visit.WithArea(0, area);
    }

    private static void Matches(Bench bench, [System.Runtime.CompilerServices.CallerMemberName] string name = "")
    {
        using (bench)
            ExpectedText.Matches(bench.Picture, bench.Width == 80 ? name : $"{name}_{bench.Width}");
    }
}
