using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Screens;

/// <summary>The earlier applications, and the ways to name one more or none.</summary>
internal sealed class PastBody : QuestionBody
{
    private readonly InterviewSession _session;
    private readonly ListingView _list;
    private int _shown;

    public PastBody(Look look, InterviewSession session, Ways way)
        : base(look)
    {
        _session = session;
        _list = new ListingView(look, width =>
            Row.Of(
                [
                    .. Past.Select(past => ("* ", WhatWasSaid.OfUse(session.Knowledge, past))),
                    ("+ ", "add an application"),
                    Past.Length > 0
                        ? ("> ", "that is all")
                        : (session.Area.Past is { IsEmpty: true } ? "(x) " : "( ) ", "nothing was applied"),
                ],
                width
            )
        )
        {
            Width = Dim.Fill(),
            Height = Dim.Fill(),
        };
        _shown = Past.Length;
        _list.PointAt(_shown);
        _list.Picked += at =>
        {
            if (at < Past.Length)
                way.PickPast(at);
            else if (at == Past.Length)
                way.PickPast(null);
            else
                Finish(way);
        };
        _list.Deleted += at =>
        {
            if (at < Past.Length)
                session.Change(session.Area.WithoutPastAt(at));
        };
        Add(_list);
    }

    public override IReadOnlyList<View> Stops => [_list];

    public override string HowTo => "Enter opens; Delete takes one out; F8 goes on.";

    private PastApplication[] Past => [.. _session.Area.Past ?? []];

    public override void Renew()
    {
        // Back from the picker, the cursor stands where one more can be added.
        if (_shown != Past.Length)
            _list.PointAt(Past.Length);
        _shown = Past.Length;
        _list.Renew();
    }

    private void Finish(Ways way)
    {
        if (Past.Length == 0)
            _session.Change(_session.Area with { Past = [] });
        way.Next();
    }
}
