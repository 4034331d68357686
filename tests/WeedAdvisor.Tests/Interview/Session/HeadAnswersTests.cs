using Terminal.Gui.Input;
using WeedAdvisor.Asking;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Tests.Screens;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Interview.Session;

/// <summary>
/// What holds for the whole nursery is said once, at the head of the visit; an area may say otherwise.
/// </summary>
public sealed class HeadAnswersTests
{
    private const string Licensed = "licensed";

    private static readonly Answer s_yes = new Answer.Words(WordSet.Of("yes"));
    private static readonly Answer s_no = new Answer.Words(WordSet.Of("no"));

    private readonly FakeKeeper _keeper = new();

    [Fact]
    public void An_answer_for_the_whole_nursery_is_given_once_and_holds_in_every_area()
    {
        InterviewSession session = Begin();
        session.AddArea("Yard");
        session.GoToArea(0);
        session.Say(Licensed, s_yes);
        Assert.Equal(s_yes, session.Visit.Head[Licensed]);
        Assert.All(session.Visit.Areas, area => Assert.Equal(s_yes, area.Answers[Licensed]));
        session.AddArea("Bed");
        Assert.Equal(s_yes, session.Area.Answers[Licensed]);
        Assert.Equal("for the whole nursery", HeadAnswers.Told(session, Question));
        Assert.Single(VisitText.Of(session.Visit).Split('\n'), line =>
            line.Contains("licensed", StringComparison.Ordinal)
        );
        AssertSurvivesItsFile(session);
    }

    [Fact]
    public void An_area_may_say_otherwise_and_come_back()
    {
        InterviewSession session = TwoAreas();
        session.AnswerForAll(Question, isForAll: false);
        session.Say(Licensed, s_no);
        Assert.Equal(s_yes, session.Visit.Head[Licensed]);
        Assert.Equal([s_yes, s_no], session.Visit.Areas.Select(area => area.Answers[Licensed]));
        Assert.Equal("for Yard alone", HeadAnswers.Told(session, Question));
        AssertSurvivesItsFile(session);

        // What is said elsewhere for all leaves this one as it is.
        session.GoToArea(0);
        session.SayNotKnown(Question);
        Assert.Equal([new Answer.NotKnown(), s_no], session.Visit.Areas.Select(area => area.Answers[Licensed]));
        session.GoToArea(1);
        session.AnswerForAll(Question, isForAll: true);
        Assert.Equal(new Answer.NotKnown(), session.Area.Answers[Licensed]);
        AssertSurvivesItsFile(session);
    }

    [Fact]
    public void One_undo_takes_an_answer_out_of_all_areas()
    {
        InterviewSession session = TwoAreas();
        string before = VisitText.Of(session.Visit);
        session.Say(Licensed, s_no);
        Assert.All(session.Visit.Areas, area => Assert.Equal(s_no, area.Answers[Licensed]));
        string after = VisitText.Of(session.Visit);
        Assert.Equal("licensed of the whole nursery", session.Undo());
        Assert.Equal(before, VisitText.Of(session.Visit));
        session.Redo();
        Assert.Equal(after, VisitText.Of(session.Visit));
        session.Clear(Question);
        Assert.Empty(session.Visit.Head);
        Assert.All(session.Visit.Areas, area => Assert.Empty(area.Answers));
    }

    [Fact]
    public void An_area_of_an_older_file_keeps_what_was_said_of_it_alone()
    {
        Visit old = VisitEdits.Begin(new DateOnly(2026, 4, 14)).WithNewArea("Yard");
        old = old.WithArea(1, old.Areas[1].WithAnswer(Licensed, s_no));
        var session = new InterviewSession(ShippedRules.Knowledge, new FakeAdvice(), old, _keeper);
        session.Say(Licensed, s_yes);
        Assert.Equal([s_yes, s_no], session.Visit.Areas.Select(area => area.Answers[Licensed]));
    }

    [Fact]
    public void Screen_and_ask_give_the_same_visit()
    {
        InterviewSession asked = TwoAreas();
        string said = Ask(
            asked,
            "go licensed",
            "here no",
            "area 1",
            "go licensed",
            "no",
            "area 2",
            "go licensed",
            "all no"
        );
        Assert.Contains(
            "an answer holds for the whole nursery",
            said.ReplaceLineEndings(" "),
            StringComparison.Ordinal
        );
        Assert.Contains("an answer holds for Yard alone", said.ReplaceLineEndings(" "), StringComparison.Ordinal);

        InterviewSession session = TwoAreas();
        session.GoTo(Question);
        using var bench = new Bench(session: session);
        Assert.Contains("The answer holds for the whole nursery.", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.F6, Key.F6, Key.Tab, Key.Enter).Press(Key.Tab.WithShift, Key.CursorDown, Key.Space);
        Assert.Equal([s_yes, s_no], session.Visit.Areas.Select(area => area.Answers[Licensed]));
        Assert.Contains("The answer holds for Yard alone.", bench.Picture, StringComparison.Ordinal);
        session.GoToArea(0);
        session.GoTo(Question);
        bench.Press(Key.F6, Key.F6, Key.CursorDown, Key.Space);
        session.GoToArea(1);
        session.GoTo(Question);
        bench.Press(Key.F6, Key.F6, Key.Tab, Key.Enter);
        Assert.Equal(VisitText.Of(asked.Visit), VisitText.Of(session.Visit));
        Assert.Equal([s_no, s_no], session.Visit.Areas.Select(area => area.Answers[Licensed]));
    }

    private static WeedAdvisor.Knowledge.Records.Question Question => ShippedRules.Knowledge.QuestionOf(Licensed)!;

    private static void AssertSurvivesItsFile(InterviewSession session)
    {
        string text = VisitText.Of(session.Visit);
        Visit read = VisitFile.Parse(text, "visit.yaml", ShippedRules.Knowledge).Value!;
        Assert.Equal(text, VisitText.Of(read));
        Assert.Equal(session.Visit.Head, read.Head);
        Assert.Equal(session.Visit.Areas.Select(area => area.Answers), read.Areas.Select(area => area.Answers));
    }

    private InterviewSession Begin() =>
        new(ShippedRules.Knowledge, new FakeAdvice(), VisitEdits.Begin(new DateOnly(2026, 4, 14)), _keeper);

    private InterviewSession TwoAreas()
    {
        InterviewSession session = Begin();
        session.Say(Licensed, s_yes);
        session.AddArea("Yard");
        return session;
    }

    private static string Ask(InterviewSession session, params string[] lines)
    {
        using var input = new StringReader(string.Join('\n', lines) + "\n");
        using var output = new StringWriter { NewLine = "\n" };
        new AskDialogue(session, new FakeStore(), new Lines(input, output, echo: true)).Run();
        return output.ToString();
    }
}
