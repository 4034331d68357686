using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Session;

namespace WeedAdvisor.Screens;

/// <summary>Why an action is advised, waits or is barred; and what would change that.</summary>
internal sealed class DetailSheet : Sheet
{
    private readonly DocumentView _page;
    private readonly Action? _label;
    private bool _full;
    private bool _changes;

    /// <param name="look">The look.</param>
    /// <param name="session">The interview.</param>
    /// <param name="action">The action's id.</param>
    /// <param name="label">Opens the grower's own label of a treatment.</param>
    /// <param name="search">Asks for words to look for on a page.</param>
    public DetailSheet(
        Look look,
        InterviewSession session,
        string action,
        Action<string> label,
        Action<DocumentView> search
    )
        : base(look, "Why")
    {
        _label = session.Knowledge.Treatments.ContainsKey(action) ? () => label(action) : null;
        _page = new DocumentView(look, () =>
            session.InUnits(
                _changes
                    ? UnlockPage.Of(session, action)
                    : ReasonPage.Of(session.Knowledge, session.Advice, session.Looked, action, _full)
            )
        )
        {
            Y = 2,
            Width = Dim.Fill(),
            Height = Dim.Fill(),
        };
        _page.Searched += search;
        _page.Ticked += _ =>
        {
            _full = !_full;
            _page.Renew();
        };
        Add(_page);
    }

    public override IReadOnlyList<View> Stops => [_page];

    public override string Keys =>
        _label is null
            ? "Up and Down  / find  Space every condition  Ctrl+W what would change it  Esc"
            : "/ find  Space every condition  Ctrl+W what changes it  Ctrl+L your label  Esc";

    public override bool Hear(Key key)
    {
        if (key == Key.W.WithCtrl)
        {
            _changes = !_changes;
            _page.Renew();
            return true;
        }

        if (_label is null || key != Key.L.WithCtrl)
            return false;
        _label();
        return true;
    }

    public override void Renew() => _page.Renew();
}
