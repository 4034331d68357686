using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Screens;

/// <summary>A question of the program itself, such as whether to save: a text and a few ways to go.</summary>
internal sealed class ChoiceSheet : Sheet
{
    private readonly ListingView _list;
    private readonly Action? _escape;

    /// <param name="look">The look.</param>
    /// <param name="title">The title.</param>
    /// <param name="text">What it is about.</param>
    /// <param name="ways">The ways to go; each closes the sheet first.</param>
    /// <param name="escape">What Esc does after closing; null for nothing.</param>
    public ChoiceSheet(Look look, string title, string text, (string Label, Action Go)[] ways, Action? escape = null)
        : base(look, title)
    {
        _escape = escape;
        var about = new TextRows(look) { Y = 2, Width = Dim.Fill() };
        about.Show((text, LineTone.Plain));
        about.Height = Dim.Func(_ => about.RowsAt(Math.Max(8, Viewport.Width)));
        _list = new ListingView(look, width => Row.Of(ways.Select(way => ("", way.Label)), width))
        {
            Y = Pos.Bottom(about) + 1,
            Width = Dim.Fill(),
            Height = Dim.Fill(),
        };
        _list.Picked += at =>
        {
            Close();
            ways[at].Go();
        };
        Add(about, _list);
    }

    public override IReadOnlyList<View> Stops => [_list];

    public override string Keys => "Up and Down   Enter choose   Esc close";

    public override void Escape()
    {
        Close();
        _escape?.Invoke();
    }
}
