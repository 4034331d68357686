using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Screens;

/// <summary>The weeds seen, and the ways to name one more or none.</summary>
internal sealed class WeedsBody : QuestionBody
{
    private readonly InterviewSession _session;
    private readonly ListingView _list;
    private int _shown;

    public WeedsBody(Look look, InterviewSession session, Ways way)
        : base(look)
    {
        _session = session;
        _list = new ListingView(look, width =>
            Row.Of(
                [
                    .. Weeds.Select(seen => ("* ", Answering.Weed(session.Knowledge, seen))),
                    ("+ ", "add a weed"),
                    Weeds.Length > 0
                        ? ("> ", "that is all")
                        : (session.Area.Weeds is { IsEmpty: true } ? "(x) " : "( ) ", "no weeds seen"),
                ],
                width
            )
        )
        {
            Width = Dim.Fill(),
            Height = Dim.Fill(),
        };
        _shown = Weeds.Length;
        _list.PointAt(_shown);
        _list.Picked += at =>
        {
            if (at < Weeds.Length)
                way.PickWeed(Weeds[at]);
            else if (at == Weeds.Length)
                way.PickWeed(null);
            else
                Finish(way);
        };
        _list.Deleted += at =>
        {
            if (at < Weeds.Length)
                session.Change(session.Area.WithoutSeen(Weeds[at]));
        };
        Add(_list);
    }

    public override IReadOnlyList<View> Stops => [_list];

    public override string HowTo => "Enter opens; Delete takes a weed out; F8 goes on.";

    private WeedSeen[] Weeds => [.. _session.Area.Weeds ?? []];

    public override void Renew()
    {
        // Back from the picker, the cursor stands where one more can be added.
        if (_shown != Weeds.Length)
            _list.PointAt(Weeds.Length);
        _shown = Weeds.Length;
        _list.Renew();
    }

    private void Finish(Ways way)
    {
        if (Weeds.Length == 0)
            _session.Change(_session.Area with { Weeds = [] });
        way.Next();
    }
}
