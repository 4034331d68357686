using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview;

namespace WeedAdvisor.Screens;

/// <summary>Why an action is advised, waits or is barred.</summary>
internal sealed class DetailSheet : Sheet
{
    private readonly ListingView _list;
    private bool _full;

    public DetailSheet(Look look, InterviewSession session, string action)
        : base(look, "Why")
    {
        _list = new ListingView(look, width => Row.Of(
            ReasonLines.Of(session.Knowledge, session.Advice, action, width, _full)))
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

    public override string Keys => "Up and Down   Space every condition, or only the reasons   Esc close";
}
