using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Screens;

/// <summary>A number or a date that is typed.</summary>
internal sealed class TypedBody : QuestionBody
{
    private readonly InterviewSession _session;
    private readonly Question _question;
    private readonly Action<string?> _tell;
    private readonly TypeField _field;
    private string _given;

    public TypedBody(Look look, InterviewSession session, Question question, Ways way, Action<string?> tell)
        : base(look)
    {
        _session = session;
        _question = question;
        _tell = tell;
        _given = Given();
        _field = new TypeField(look, _given) { X = 1, Width = 14 };
        _field.Entered += way.Next;
        _field.Typed += () => tell(null);
        var unit = new TextRows(look)
        {
            X = 16,
            Width = Dim.Fill(),
            Height = 1,
        };
        unit.Show((UnitOf(question), LineTone.Quiet));
        Add(_field, unit);
    }

    public override IReadOnlyList<View> Stops => [_field];

    private static string UnitOf(Question question) =>
        question.Kind switch
        {
            QuestionKind.Number => question.Unit ?? "",
            QuestionKind.Date => "year-month-day",
            _ => "a short name",
        };

    public override string HowTo => $"Type {Answering.Expected(_question)}. Enter goes on.";

    public override void Renew()
    {
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
            Answer.Words words => words.Value.ToString(),
            _ => "",
        };
}
