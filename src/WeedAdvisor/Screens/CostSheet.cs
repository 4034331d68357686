using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Desks.Costs;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Screens;

/// <summary>What the area costs: the numbers above, below them rounds and ways as soon as a number moves.</summary>
internal sealed class CostSheet : Sheet
{
    private const int FieldsAt = 2,
        NoteRows = 2,
        FieldWidth = 11;

    private readonly CostDesk _desk;
    private readonly FieldRow[] _rows;
    private readonly TextRows _note;
    private readonly DocumentView _result;
    private bool _isAway;

    /// <param name="look">The look.</param>
    /// <param name="area">Name of the area.</param>
    /// <param name="desk">Its costs.</param>
    /// <param name="open">Opens a way by its id.</param>
    /// <param name="search">Asks for words to look for on a page.</param>
    public CostSheet(Look look, string area, CostDesk desk, Action<string> open, Action<DocumentView> search)
        : base(look, $"What it costs: {area}")
    {
        _desk = desk;
        var invented = new TextRows(look)
        {
            Y = 1,
            Width = Dim.Fill(),
            Height = 1,
        };
        invented.Show((CostDesk.Invented, LineTone.Quiet));
        int note = FieldsAt + CostField.All.Length;
        _note = new TextRows(look)
        {
            Y = note,
            Width = Dim.Fill(),
            Height = NoteRows,
        };
        _result = new DocumentView(look, desk.Page)
        {
            Y = note + NoteRows,
            Width = Dim.Fill(),
            Height = Dim.Fill(),
        };
        _result.Searched += search;
        _result.Opened += way =>
        {
            _isAway = true;
            open(way);
        };
        _result.HasFocusChanged += (_, _) => Renew();
        Add(invented, _note, _result);
        _rows = [.. CostField.All.Select((_, at) => new FieldRow(look, desk, at, FieldWidth, () => FocusOn(at + 1)))];
        int label = CostField.All.Max(field => field.Label.Length) + 2;
        for (int at = 0; at < _rows.Length; at++)
        {
            _rows[at].Place(FieldsAt + at, label);
            _rows[at].Changed += Renew;
            _rows[at].Entered += Renew;
            Add(_rows[at]);
        }

        Renew();
    }

    public override IReadOnlyList<View> Stops => [.. _rows.Select(row => row.Field), _result];

    public override string Keys => "Left and Right less and more   Enter next, or a way in full   PgDn   Esc back";

    private int At => Array.FindIndex(_rows, row => row.Field.HasFocus);

    public override bool Hear(Key key)
    {
        if (At < 0)
            return _result.HasFocus && key == Key.CursorUp && _result.At == 0 && FocusOn(_rows.Length - 1);
        if (key == Key.PageDown)
            _result.Scroll(+1);
        else if (key == Key.PageUp)
            _result.Scroll(-1);
        else if (key == Key.CursorDown)
            FocusOn(At + 1);
        else if (key == Key.CursorUp)
            FocusOn(Math.Max(0, At - 1));
        else if (key == Key.CursorRight || key == new Key('+'))
            Move(+1);
        else if (key == Key.CursorLeft || key == new Key('-'))
            Move(-1);
        else
            return false;
        return true;
    }

    /// <summary>Whoever has looked at a way comes back to it, not to the first number.</summary>
    public override void Enter()
    {
        if (_isAway)
            _result.SetFocus();
        else
            base.Enter();
        _isAway = false;
    }

    public override void Renew()
    {
        foreach (FieldRow row in _rows ?? [])
            row.Renew();
        AdviceLine about =
            _rows is null || At < 0
                ? new AdviceLine("Enter on a way: what changes against today's, line by line.", LineTone.Quiet)
                : _desk.About(CostField.All[At]);
        _note.Show((about.Text, about.Tone));
        _result.Renew();
    }

    /// <summary>Moves the number that the keys are in to its next stop.</summary>
    private void Move(int direction)
    {
        _desk.Move(CostField.All[At], direction);
        Renew();
    }

    private bool FocusOn(int at)
    {
        if (at < _rows.Length)
        {
            _rows[at].Field.SetFocus();
            return true;
        }

        _result.SetFocus();
        _result.PointAtFirstAction();
        return true;
    }
}
