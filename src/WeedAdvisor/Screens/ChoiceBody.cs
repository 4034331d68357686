using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pickers;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Screens;

/// <summary>Answers on a list: one of them, or any number.</summary>
internal sealed class ChoiceBody : QuestionBody
{
    private readonly ListingView _list;
    private readonly bool _several;
    private readonly InterviewSession _session;
    private readonly Question _question;

    public ChoiceBody(Look look, InterviewSession session, Question question, Ways way)
        : base(look)
    {
        _several = Answering.TakesSeveral(question);
        _session = session;
        _question = question;
        _list = new ListingView(look, width =>
            Row.Of(ChoicePage.Of(session, question).Select(entry => (Mark(entry), entry.Text)), width)
        )
        {
            Width = Dim.Fill(),
            Height = Dim.Fill(),
        };
        _list.Ticked += at => Pick(ChoicePage.Of(session, question)[at]);
        _list.Picked += at =>
        {
            ChoiceEntry entry = ChoicePage.Of(session, question)[at];
            if (_several || !entry.IsMarked)
                Pick(entry);
            if (!_several)
                way.Next();
        };
        ChoiceEntry[] entries = [.. ChoicePage.Of(session, question)];
        _list.PointAt(Array.FindIndex(entries, entry => entry.IsMarked));
        Add(_list);

        void Pick(ChoiceEntry entry)
        {
            if (entry.Id is null && !Losses.Entries(session.Knowledge, question, session.Area).IsEmpty)
                way.Drop(() => ChoicePage.Pick(session, question, entry));
            else
                ChoicePage.Pick(session, question, entry);
        }
    }

    public override IReadOnlyList<View> Stops => [_list];

    public override string HowTo =>
        _several ? "Enter ticks or unticks; F8 goes on." : "Enter answers and goes on; Space answers and stays.";

    // Of several at once the one under the cursor as if it alone were so.
    public override Answer? Pointed =>
        ChoicePage.Of(_session, _question).ElementAtOrDefault(_list.At) is { Id: { } id }
            ? new Answer.Words(WordSet.Of(id))
            : null;

    public override void Renew() => _list.Renew();

    private string Mark(ChoiceEntry entry) =>
        (_several, entry.IsMarked) switch
        {
            (true, true) => "[x] ",
            (true, false) => "[ ] ",
            (false, true) => "(x) ",
            _ => "( ) ",
        };
}
