using CsCheck;
using Terminal.Gui.Input;
using WeedAdvisor.Asking;
using WeedAdvisor.Golden;
using WeedAdvisor.Interview.Desks;
using WeedAdvisor.Interview.Earlier;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Tests.Interview;
using WeedAdvisor.Tests.Screens;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Earlier;

/// <summary>An earlier use told fully, the same in one line, step by step and on the screens.</summary>
public sealed class TellingTests
{
    private static readonly DateOnly s_day = ShippedRules.Demo.Date;

    [Fact]
    public void Everything_that_is_known_of_a_use_is_told_in_one_line()
    {
        PastApplication past = Read(
            "oxadiazon granules, 2026-04-10, 2 pm, granules, 150 lb/acre, part only, watered in, not aired, it "
                + "drifted, "
                + "spotted spurge, many, 3 seasons running"
        ).Value!;
        Assert.Equal(
            new PastApplication("oxadiazon-granule", new DateOnly(2026, 4, 10), "escapes", WordSet.Of("spurge-spotted"))
            {
                Hour = new TimeOnly(14, 0),
                Method = "granules",
                Rate = 150,
                RateUnit = "lb/acre",
                PartOnly = true,
                WateredIn = true,
                Aired = false,
                Drifted = true,
                CameThrough = "many",
                SeasonsRunning = 3,
            },
            past
        );
    }

    [Theory]
    [InlineData("active prodiamine + isoxaben", "prodiamine isoxaben", "", null)]
    [InlineData("active DCPA + benefin", "benfluralin chlorthal-dimethyl", "", null)]
    [InlineData("active diuron", "diuron", "", null)]
    [InlineData("active prodiamine group 3", "prodiamine", "3", null)]
    [InlineData("group 3 + 14", "", "3 14", null)]
    [InlineData("other weed killer", "", "", "weed-killer")]
    [InlineData("another pesticide", "", "", "other-pesticide")]
    public void A_product_that_is_not_in_the_list_is_told_by_what_stands_on_its_label(
        string typed,
        string actives,
        string groups,
        string? kind
    )
    {
        PastApplication past = Read(typed + ", yesterday").Value!;
        Assert.Null(past.Treatment);
        Assert.Equal(WordSet.Of(actives.Split(' ', StringSplitOptions.RemoveEmptyEntries)), past.Actives);
        Assert.Equal(WordSet.Of(groups.Split(' ', StringSplitOptions.RemoveEmptyEntries)), past.Groups);
        Assert.Equal(kind, past.Kind);
        Assert.Equal(s_day.AddDays(-1), past.Date);
    }

    [Theory]
    [InlineData("active prodiamin", "No record knows the active \"prodiamin\". Did you mean prodiamine?")]
    [InlineData("group 99", "No record knows the group \"99\".")]
    [InlineData("oxadiazon granules, 25:00", "\"25:00\" is not an hour. Give it as 14:00 or 2 pm.")]
    [InlineData("oxadiazon granules, 13 pm", "\"13 pm\" is not an hour. Give it as 14:00 or 2 pm.")]
    [InlineData("oxadiazon granules, 150 lb/acr", "\"lb/acr\" is not a unit of a rate. Did you mean lb/acre?")]
    [InlineData("oxadiazon granules, 0 seasons", "Seasons running are a number from 1 to 50.")]
    [InlineData("oxadiazon granules, granuls", "Did you mean granules?")]
    [InlineData("oxadiazon granules, few, many", "\"many\": how many came through is told twice.")]
    [InlineData("oxadiazon granules, spurge", "\"spurge\" fits several: ")]
    public void A_slip_is_told_in_one_line_with_what_is_near(string typed, string told) =>
        Assert.Contains(told, Read(typed).Error, StringComparison.Ordinal);

    [Fact]
    public void Whatever_a_file_can_tell_comes_back_from_the_form_as_it_was()
    {
        InterviewSession session = DemoInterview.At("container-yard");
        string[] treatments = [.. session.Knowledge.Treatments.Keys];
        string[] weeds = [.. session.Knowledge.Weeds.Keys];
        Gen.Int[0, 1 << 20]
            .Array[25]
            .Sample(
                tape =>
                {
                    PastApplication past = Drawn(new Queue<int>(tape), treatments, weeds);
                    var desk = new PastDesk(session, past, PastFields.All);
                    Assert.Null(desk.Trouble);
                    Assert.Equal(past, desk.Past);
                    Assert.All(PastFields.All, field => Assert.False(field.IsTold(field.Without(past)), field.Id));
                },
                iter: Sizes.Of(few: 200, many: 20_000),
                threads: 1
            );
    }

    [Fact]
    public void The_screen_the_line_and_the_steps_tell_the_same()
    {
        InterviewSession line = Blank(),
            steps = Blank(),
            screen = Blank();
        Ask(line, "oxadiazon granules, 2026-04-10, 14:00, granules, 150 lb/acre\nquit\n");
        Ask(steps, "tell\noxadiazon granules\n2026-04-10\n\n\n2 pm\ngranules\n\n\n\n\n150 lb/acre\ndone\nquit\n");
        using (var bench = new Bench(session: screen))
        {
            bench.Press(Key.Enter).Type("oxadiazon granules").Press(Key.Enter).Type("2026-04-10").Press(Key.F9);
            bench
                .Press(Key.CursorDown)
                .Type("14:00")
                .Press(Key.Enter, Key.Space, Key.Enter, Key.Enter, Key.Enter, Key.Enter, Key.Enter);
            bench.Type("150 lb/acre").Press(Key.Esc);
            for (int stop = 0; stop < 5; stop++)
                bench.Press(Key.Tab);
            bench.Press(Key.Enter);
        }

        Assert.Equal(VisitText.Of(line.Visit), VisitText.Of(steps.Visit));
        Assert.Equal(VisitText.Of(line.Visit), VisitText.Of(screen.Visit));
        Assert.Contains(
            "hour: '14:00', rate: 150, rate-unit: lb/acre, method: granules",
            VisitText.Of(screen.Visit),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_was_put_on_lately_is_asked_first_and_yes_leads_to_telling_it()
    {
        var session = new InterviewSession(
            ShippedRules.Knowledge,
            new LiveAdviceSource(ShippedRules.Advisor),
            VisitEdits.Begin(s_day)
        );
        Assert.Equal(PutOnLately.Question, session.Current!.Id);
        session.Say(PutOnLately.Question, Word("yes"));
        session.Next();
        Assert.Equal(QuestionKind.Past, session.Current!.Kind);
        session.Back();
        session.Say(PutOnLately.Question, Word("no"));
        session.Next();
        session.Next();
        Assert.Equal("place", session.Suggested!.Id);
    }

    [Fact]
    public void Yes_leads_to_the_earlier_uses_also_when_only_older_ones_are_told()
    {
        var session = new InterviewSession(
            ShippedRules.Knowledge,
            new LiveAdviceSource(ShippedRules.Advisor),
            VisitEdits.Begin(s_day)
        );
        session.Change(session.Area.WithPast(Read("oxadiazon granules, 2025-09-01").Value!));
        session.Say(PutOnLately.Question, Word("yes"));
        session.Next();
        Assert.Equal(QuestionKind.Past, session.Current!.Kind);
        session.Next();
        Assert.NotEqual(QuestionKind.Past, session.Current!.Kind);
    }

    [Fact]
    public void A_use_of_this_week_answers_that_something_was_put_on_and_no_is_not_taken_against_it()
    {
        InterviewSession session = Blank();
        session.Say(PutOnLately.Question, Word("no"));
        session.Change(session.Area.WithPast(Read("oxadiazon granules, yesterday").Value!));
        Assert.Equal("yes", session.Area.WordOf(PutOnLately.Question));
        Assert.Contains("Oxadiazon granules on 2026-04-13", session.Remark, StringComparison.Ordinal);
        session.Say(PutOnLately.Question, Word("no"));
        Assert.Equal("yes", session.Area.WordOf(PutOnLately.Question));
        session.Change(session.Area.WithoutPastAt(0));
        session.Say(PutOnLately.Question, Word("no"));
        Assert.Equal("no", session.Area.WordOf(PutOnLately.Question));
        Assert.Null(session.Remark);
    }

    [Fact]
    public void A_file_that_tells_a_use_of_this_week_and_denies_it_is_refused_with_its_place()
    {
        const string Text = """
            visit: two-minds
            date: 2026-04-14
            answers:
              put-on-lately: no
            areas:
              - id: yard
                name: Yard
                past:
                  - { treatment: oxadiazon-granule, date: 2026-04-12 }
            """;
        Assert.Equal(
            "mine.yaml:9:7: found a use of 2026-04-12 although 'put-on-lately' is no; expected 'put-on-lately: yes' in "
                + "this "
                + "area, or another day of that use",
            Assert.Single(VisitFile.Parse(Text, "mine.yaml", ShippedRules.Knowledge).Refusals).ToString()
        );
        Assert.True(
            VisitFile
                .Parse(Text.Replace("04-12", "04-06", StringComparison.Ordinal), "mine.yaml", ShippedRules.Knowledge)
                .IsGood
        );
    }

    [Fact]
    public void The_visit_cannot_be_of_a_day_before_what_it_tells()
    {
        InterviewSession session = Blank();
        session.Change(session.Area.WithPast(Read("oxadiazon granules, yesterday").Value!));
        Assert.Contains(
            "a use of 2026-04-13",
            session.Describe(s_day.AddDays(-5), null, null),
            StringComparison.Ordinal
        );
        Assert.Equal(s_day, session.Visit.Date);
        Assert.Null(session.Describe(s_day.AddDays(-1), null, null));
    }

    [Fact]
    public void What_is_asked_once_stands_at_the_head_and_holds_for_all_areas_that_say_nothing_else()
    {
        InterviewSession session = Blank();
        session.AddArea("Second");
        session.GoToArea(0);
        session.Say("region", Word("north-carolina-piedmont"));
        Assert.All(session.Visit.Areas, area => Assert.Equal("north-carolina-piedmont", area.WordOf("region")));
        string text = VisitText.Of(session.Visit);
        Assert.Equal(
            text.IndexOf("region:", StringComparison.Ordinal),
            text.LastIndexOf("region:", StringComparison.Ordinal)
        );
        session.AddArea("Third");
        Assert.Equal("north-carolina-piedmont", session.Area.WordOf("region"));
        session.Undo();
        session.Undo();
        Assert.All(session.Visit.Areas, area => Assert.Null(area.WordOf("region")));
    }

    [Fact]
    public void An_area_with_an_answer_of_its_own_keeps_it()
    {
        Visit visit = VisitEdits.Begin(s_day).WithNewArea("Own").WithNewArea("Other");
        visit = visit.WithArea(1, visit.Areas[1].WithAnswer("licensed", Word("no")));
        visit = visit.WithNurseryAnswer(0, "licensed", Word("yes"));
        Assert.Equal(["yes", "no", "yes"], visit.Areas.Select(area => area.WordOf("licensed")));
        Assert.Equal(Word("yes"), visit.Head["licensed"]);
        visit = visit.WithNurseryAnswer(1, "licensed", null);
        Assert.Equal(["yes", null, "yes"], visit.Areas.Select(area => area.WordOf("licensed")));
    }

    private static Typed<PastApplication> Read(string typed) => TypedPast.Read(ShippedRules.Knowledge, typed, s_day);

    private static Answer.Words Word(string word) => new(WordSet.Of(word));

    private static InterviewSession Blank()
    {
        var session = new InterviewSession(
            ShippedRules.Knowledge,
            new LiveAdviceSource(ShippedRules.Advisor),
            VisitEdits.Begin(s_day)
        );
        session.GoTo(session.Knowledge.Questions.Single(question => question.Kind == QuestionKind.Past));
        return session;
    }

    private static void Ask(InterviewSession session, string typed)
    {
        using var output = new StringWriter { NewLine = "\n" };
        new AskDialogue(session, new FakeStore(), new Lines(new StringReader(typed), output, echo: true)).Run();
    }

    private static PastApplication Drawn(Queue<int> tape, string[] treatments, string[] weeds)
    {
        int Next(int below) => tape.Dequeue() % below;
        bool Coin() => Next(2) == 0;
        string? OneOf(params string?[] words) => words[Next(words.Length)];
        bool? Flag() =>
            Next(3) switch
            {
                0 => null,
                1 => true,
                _ => false,
            };
        int product = Next(4);
        WordSet escaped = WordSet.Of(Enumerable.Range(0, Next(3)).Select(_ => weeds[Next(weeds.Length)]));
        bool rated = Coin();
        return new PastApplication(
            product == 0 ? treatments[Next(treatments.Length)] : null,
            Coin() ? s_day.AddDays(-Next(900)) : null,
            escaped.Count > 0 ? "escapes" : OneOf(null, "clean", "escapes", "injury"),
            escaped
        )
        {
            Actives = product == 1 ? WordSet.Of("prodiamine", "isoxaben") : WordSet.Empty,
            Groups = product is 2 || (product == 1 && Coin()) ? WordSet.Of("3", "14") : WordSet.Empty,
            Kind = product == 3 ? OneOf("weed-killer", "other-pesticide") : null,
            Hour = Coin() ? new TimeOnly(Next(24), Next(60)) : null,
            Method = OneOf(null, "granules", "low-coarse-spray", "other-spray", "mist-or-fog"),
            Rate = rated ? (Next(899) + 1) / 4m : null,
            RateUnit = rated
                ? OneOf([.. WeedAdvisor.Knowledge.CatalogueWords.RateUnits(ShippedRules.Knowledge)])
                : null,
            PartOnly = Flag(),
            WateredIn = Flag(),
            Aired = Flag(),
            Drifted = Flag(),
            CameThrough = OneOf(null, "few", "many"),
            SeasonsRunning = Coin() ? Next(50) + 1 : null,
        };
    }
}
