using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Session;

namespace WeedAdvisor.Screens;

/// <summary>The page behind the last question of an area.</summary>
internal sealed class EndPage : Pane
{
    private readonly InterviewSession _session;
    private readonly TextRows _text;
    private readonly ListingView _list;

    /// <param name="look">The look.</param>
    /// <param name="session">The interview.</param>
    /// <param name="ways">What can be done from here.</param>
    public EndPage(Look look, InterviewSession session, (string Label, Action Go)[] ways)
        : base(look)
    {
        _session = session;
        _text = new TextRows(look) { Width = Dim.Fill() };
        _text.Height = Dim.Func(_ => _text.RowsAt(Math.Max(8, Viewport.Width)));
        _list = new ListingView(look, width => Row.Of(ways.Select(way => ("", way.Label)), width))
        {
            Y = Pos.Bottom(_text) + 1,
            Width = Dim.Fill(),
            Height = Dim.Fill(),
        };
        _list.Picked += at => ways[at].Go();
        Add(_text, _list);
        Renew();
    }

    public override IReadOnlyList<View> Stops => [_list];

    public override void Renew()
    {
        _text.Show(
            ($"{_session.Area.Name}: that was the last question", LineTone.Heading),
            (_session.Progress.Left, LineTone.Plain),
            ("The advice stands beside this; F6 goes there, Enter opens the reasons.", LineTone.Plain)
        );
    }
}
