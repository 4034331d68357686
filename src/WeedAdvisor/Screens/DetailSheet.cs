using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Screens;

/// <summary>Why an action is advised, waits or is barred.</summary>
internal sealed class DetailSheet : Sheet
{
    private readonly ListingView _list;
    private readonly Action? _label;
    private bool _full;

    /// <param name="look">The look.</param>
    /// <param name="session">The interview.</param>
    /// <param name="action">The action's id.</param>
    /// <param name="label">Opens the grower's own label of a treatment.</param>
    public DetailSheet(Look look, InterviewSession session, string action, Action<string> label)
        : base(look, "Why")
    {
        _label = session.Knowledge.Treatments.ContainsKey(action) ? () => label(action) : null;
        _list = new ListingView(look, width => Row.Of(
            PageLines.Of(ReasonPage.Of(session.Knowledge, session.Advice, action, _full), width)))
        {
            Y = 2,
            Width = Dim.Fill(),
            Height = Dim.Fill(),
        };
        _list.Ticked += _ =>
        {
            _full = !_full;
            _list.Renew();
        };
        Add(_list);
    }

    public override IReadOnlyList<View> Stops => [_list];

    public override string Keys => _label is null
        ? "Up and Down   Space every condition, or only the reasons   Esc close"
        : "Up and Down   Space every condition or reasons   Ctrl+L your label   Esc close";

    public override bool Hear(Key key)
    {
        if (_label is null || key != Key.L.WithCtrl)
            return false;
        _label();
        return true;
    }

    public override void Renew() => _list.Renew();
}
