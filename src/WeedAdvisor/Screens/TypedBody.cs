using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Screens;

/// <summary>A number, a date or names that are typed.</summary>
internal sealed class TypedBody : QuestionBody
{
    private const int FigureWidth = 14;
    private const int NamesWidth = 40;

    private readonly InterviewSession _session;
    private readonly Question _question;
    private readonly Action<string?> _tell;
    private readonly TypeField _field;
    private readonly TextRows? _read;
    private string _given;

    public TypedBody(Look look, InterviewSession session, Question question, Ways way, Action<string?> tell)
        : base(look)
    {
        _session = session;
        _question = question;
        _tell = tell;
        _given = Given();
        bool isOfNames = question.Kind == QuestionKind.Chemicals;
        int width = isOfNames ? NamesWidth : FigureWidth;
        _field = new TypeField(look, _given) { X = 1, Width = width };
        _field.Entered += way.Next;
        _field.Typed += () => tell(null);
        var unit = new TextRows(look)
        {
            X = width + 2,
            Width = Dim.Fill(),
            Height = 1,
        };
        unit.Show((UnitOf(question), LineTone.Quiet));
        Add(_field, unit);
        if (!isOfNames)
            return;
        _read = new TextRows(look)
        {
            X = 1,
            Y = 2,
            Width = Dim.Fill(),
            Height = Dim.Fill(),
        };
        Add(_read);
        ShowRead();
    }

    public override IReadOnlyList<View> Stops => [_field];

    // What was understood of names that may be typed in any way.
    private void ShowRead() =>
        _read?.Show(
            _session.Area.Answers.GetValueOrDefault(_question.Id) is Answer.Words { Value.Count: > 0 } said
                ? ($"Read: {Answering.Text(_session.Knowledge, _question, said)}", LineTone.Quiet)
                : ("", LineTone.Quiet)
        );

    private static string UnitOf(Question question) =>
        question.Kind switch
        {
            QuestionKind.Number => question.Unit ?? "",
            QuestionKind.Date => "year-month-day",
            QuestionKind.Chemicals => "",
            _ => "a short name",
        };

    public override string HowTo => $"Type {Answering.Expected(_question)}. Enter goes on.";

    public override void Renew()
    {
        ShowRead();
        if (_given == Given())
            return;
        _given = Given();
        _field.Put(_given);
    }

    public override bool Commit()
    {
        string typed = _field.Said.Trim();
        if (typed == _given)
            return true;
        if (typed.Length == 0)
        {
            _session.Clear(_question);
            return true;
        }

        Typed<Answer> answer = TypedAnswer.Read(_session.Knowledge, _question, typed, _session.Visit.Date);
        if (answer.Value is null)
        {
            _tell(answer.Error);
            return false;
        }

        _given = typed;
        _session.Say(_question.Id, answer.Value);
        ShowRead();
        return true;
    }

    public override bool TakeBack()
    {
        if (_field.Said.Trim() == _given)
            return false;
        _field.Put(_given);
        return true;
    }

    private string Given() =>
        _session.Area.Answers.GetValueOrDefault(_question.Id) switch
        {
            Answer.Number number => Answering.Number(number.Value),
            Answer.Date date => Answering.Date(date.Value),
            Answer.Words { Value.Count: 0 } => "none",
            Answer.Words words => words.Value.ToString(),
            _ => "",
        };
}
