using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Session;

namespace WeedAdvisor.Screens;

/// <summary>Every question of the area with what was said: go straight to one.</summary>
internal sealed class QuestionsSheet : Sheet
{
    private readonly ListingView _list;

    public QuestionsSheet(Look look, InterviewSession session)
        : base(look, $"Questions for {session.Area.Name}")
    {
        _list = new ListingView(look, width => Row.Of(session.Questions.Select(entry => Line(session, entry)), width))
        {
            Y = 2,
            Width = Dim.Fill(),
            Height = Dim.Fill(),
        };
        int at = 0;
        foreach (QuestionEntry entry in session.Questions)
        {
            if (entry.Question.Id == session.Current?.Id)
                _list.PointAt(at);
            at++;
        }

        _list.Picked += chosen =>
        {
            session.GoTo(session.Questions[chosen].Question);
            Close();
        };
        Add(_list);
    }

    public override IReadOnlyList<View> Stops => [_list];

    public override string Keys => "Up and Down   Enter go to the question   Esc close";

    private static (string Mark, string Text) Line(InterviewSession session, QuestionEntry entry)
    {
        string said = WhatWasSaid.To(session.Knowledge, entry.Question, session.Area)
            ?? entry.State switch
            {
                QuestionState.NotKnown => "not known",
                QuestionState.Skipped => "passed over",
                _ => entry.Matters ? "open" : "open; no rule needs it here",
            };
        return (entry.IsSettled ? "* " : "  ", $"{entry.Question.Ask} -- {said}");
    }
}
