using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Screens;

/// <summary>The areas of the visit: go to one, add, rename, remove.</summary>
internal sealed class AreasSheet : Sheet
{
    private readonly InterviewSession _session;
    private readonly Action<Sheet> _open;
    private readonly ListingView _list;
    private readonly TypeField _name;
    private readonly TextRows _note;
    private readonly PressView[] _presses;

    /// <param name="look">The look.</param>
    /// <param name="session">The interview.</param>
    /// <param name="open">Lays another sheet over this one.</param>
    public AreasSheet(Look look, InterviewSession session, Action<Sheet> open)
        : base(look, "Areas of this visit")
    {
        _session = session;
        _open = open;
        _list = new ListingView(look, width =>
            Row.Of(
                session.Visit.Areas.Select((area, at) => (" ", area.Name + (at == session.AreaIndex ? " (here)" : ""))),
                width
            )
        )
        {
            KeepsCursor = true,
            Y = 2,
            Width = Dim.Fill(),
            Height = Dim.Fill(6),
        };
        _list.PointAt(session.AreaIndex);
        _list.Picked += _ => Go();
        var label = new TextRows(look)
        {
            Y = Pos.AnchorEnd(5),
            Width = 34,
            Height = 1,
        };
        label.Show(("Name, to add an area or rename one", LineTone.Quiet));
        label.Width = Dim.Fill();
        _name = new TypeField(look)
        {
            X = 1,
            Y = Pos.AnchorEnd(4),
            Width = 40,
        };
        _name.Entered += AddArea;
        _note = new TextRows(look)
        {
            Y = Pos.AnchorEnd(2),
            Width = Dim.Fill(),
            Height = 1,
        };
        _presses =
        [
            new PressView(look, "Go there", Go),
            new PressView(look, "Add", AddArea),
            new PressView(look, "Rename", Rename),
            new PressView(look, "Remove", Remove),
            new PressView(look, "Close", Close),
        ];
        Add(_list, label, _name, _note);
        AddInRow(Pos.AnchorEnd(1), _presses);
    }

    public override IReadOnlyList<View> Stops => [_list, _name, .. _presses];

    public override string Keys => "Up and Down   Enter go there   Tab next field   Ctrl+Z undo   Esc close";

    public override bool TakesUndo => true;

    public override void Renew()
    {
        _note.Show(("", LineTone.Plain));
        _list.Renew();
        _list.PointAt(_session.AreaIndex);
    }

    private void Go()
    {
        _session.GoToArea(_list.At);
        Close();
    }

    private void AddArea()
    {
        _session.AddArea(_name.Said);
        Close();
    }

    private void Rename()
    {
        if (_name.Said.Trim().Length == 0)
        {
            _note.Show(("Type the new name first.", LineTone.Warning));
            return;
        }

        _session.RenameArea(_list.At, _name.Said);
        _name.Put("");
        _list.Renew();
    }

    private void Remove()
    {
        int at = _list.At;
        VisitArea area = _session.Visit.Areas[at];
        if (_session.Visit.Areas.Length == 1)
            _note.Show(("The last area stays.", LineTone.Warning));
        else if (Losses.OfArea(_session.Visit, area) is { } loss)
            _open(
                new ChoiceSheet(
                    Look,
                    $"Remove {area.Name}?",
                    $"{area.Name} holds {loss}.",
                    [("Keep it", () => { }), ("Remove it", () => Remove(at))]
                )
            );
        else
            Remove(at);
    }

    private void Remove(int at)
    {
        string name = _session.Visit.Areas[at].Name;
        _session.RemoveArea(at);
        _note.Show(($"{name} is removed. Ctrl+Z brings it back.", LineTone.Plain));
        _list.Renew();
    }
}
