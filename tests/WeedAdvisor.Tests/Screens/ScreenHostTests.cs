using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Screens;
using WeedAdvisor.Tests.Interview;

namespace WeedAdvisor.Tests.Screens;

public sealed class ScreenHostTests : IDisposable
{
    private readonly FakeKeeper _keeper = new();
    private readonly StringWriter _error = new() { NewLine = "\n" };

    [Fact]
    public void A_fault_leaves_the_terminal_and_tells_where_the_answers_are()
    {
        InterviewSession session = Session();
        int code = Run(session, app => app.Invoke(() =>
            {
                session.Say("place", new Answer.Words(WordSet.Of("walkway")));
                throw new InvalidOperationException("the roof fell in");
            }));
        Assert.Equal(70, code);
        Assert.Equal(
            "weedadvisor: internal error, a fault of this program (InvalidOperationException: the roof fell in). "
                + "Please report it with the command and the visit that led to it.\n"
                + "The answers are kept in /state/recovery.yaml and are offered at the next start.\n",
            _error.ToString()
        );
        Assert.True(_keeper.Kept!.Areas[0].Answers.ContainsKey("place"));
    }

    [Fact]
    public void Leaving_is_not_a_fault()
    {
        int code = Run(Session(), app => app.Invoke(() => app.InjectKey(Key.Q.WithCtrl)));
        Assert.Equal(0, code);
        Assert.Equal("", _error.ToString());
    }

    public void Dispose() => _error.Dispose();

    private InterviewSession Session() =>
        new(SmallTrade.Knowledge, new FakeAdvice(), VisitEdits.Begin(new DateOnly(2026, 4, 14)), _keeper);

    private int Run(InterviewSession session, Action<IApplication> before) =>
        ScreenHost.Run(session, new ScreenSettings(new FakeStore(), IsPlain: true), _error, "ansi", before);
}
