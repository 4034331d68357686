using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Screens;

/// <summary>The page of one question: the question, why it is put, its answers, and the way on.</summary>
internal sealed class QuestionPage : Pane
{
    private readonly InterviewSession _session;
    private readonly Question _question;
    private readonly TextRows _ask;
    private readonly TextRows _note;
    private readonly QuestionBody _body;
    private readonly PressView[] _presses;

    /// <param name="look">The look.</param>
    /// <param name="session">The interview.</param>
    /// <param name="question">The question.</param>
    /// <param name="way">The ways to other pages.</param>
    public QuestionPage(Look look, InterviewSession session, Question question, Ways way)
        : base(look)
    {
        _session = session;
        _question = question;
        _ask = new TextRows(look) { Width = Dim.Fill() };
        _ask.Height = Dim.Func(_ =>
            Math.Min(_ask.RowsAt(Math.Max(8, Viewport.Width)), Math.Max(2, Viewport.Height - 9))
        );
        bool hasScope = HeadAnswers.Told(session, question) is not null;
        int below = hasScope ? 4 : 3;
        _note = new TextRows(look)
        {
            Y = Pos.AnchorEnd(below),
            Width = Dim.Fill(),
            Height = 2,
        };
        _body = QuestionBody.For(look, session, question, way, Tell);
        _body.Y = Pos.Bottom(_ask) + 1;
        _body.Width = Dim.Fill();
        _body.Height = Dim.Fill(below);
        _presses =
        [
            new PressView(look, "Back", way.Back),
            new PressView(look, "Don't know", way.NotKnown),
            new PressView(look, "Clear", way.Clear),
            new PressView(look, "Next", way.Next),
        ];
        Add(_ask, _body, _note);
        AddInRow(Pos.AnchorEnd(1), _presses);
        if (hasScope)
        {
            var scope = new PressView(look, "Whole nursery or this area alone", () =>
                session.AnswerForAll(question, !session.IsForAll(question))
            );
            AddInRow(Pos.AnchorEnd(2), scope);
            _presses = [scope, .. _presses];
        }

        Renew();
    }

    public override IReadOnlyList<View> Stops => [.. _body.Stops, .. _presses];

    /// <summary>The question with the answer under the cursor; null where none is.</summary>
    public (Question Question, Answer Answer)? Pointed => _body.Pointed is { } answer ? (_question, answer) : null;

    public override bool Commit() => _body.Commit();

    public override bool TakeBack() => _body.TakeBack();

    public override void Renew()
    {
        (string, LineTone)[] scope = HeadAnswers.Told(_session, _question) is { } told
            ? [($"The answer holds {told}.", LineTone.Plain)]
            : [];
        _ask.Show([(_question.Ask, LineTone.Heading), (_question.Why, LineTone.Quiet), .. scope]);
        Tell(null);
        _body.Renew();
    }

    private void Tell(string? error)
    {
        string note = error
            ?? (
                _session.StateOf(_question) switch
                {
                    QuestionState.NotKnown => "You said that you do not know.",
                    QuestionState.Skipped => "Passed over for now.",
                    _ => _body.HowTo,
                }
            );
        _note.Show((note, error is null ? LineTone.Quiet : LineTone.Warning));
    }
}
