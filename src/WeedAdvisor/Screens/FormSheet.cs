using System.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Desks;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Screens;

/// <summary>
/// A form: its fields above, below them what follows as soon as anything does. Where the window is too low for all
/// fields, those around the one being filled in are shown.
/// </summary>
internal sealed class FormSheet : Sheet
{
    private const int AboutAt = 1,
        NoteRows = 3,
        LeastAnswerRows = 6,
        LeastLabel = 12,
        FieldWidth = 22;

    private readonly IFormDesk _desk;
    private readonly TextRows _about;
    private readonly FieldRow[] _rows;
    private readonly TextRows _note;
    private readonly ListingView _answer;
    private readonly PressView[] _presses;
    private readonly FormWay[] _ways;
    private int _first;

    /// <param name="look">The look.</param>
    /// <param name="desk">The form.</param>
    /// <param name="ways">What can be done with it beside closing it; what it gives is told in the note.</param>
    public FormSheet(Look look, IFormDesk desk, params FormWay[] ways)
        : base(look, desk.Title)
    {
        _desk = desk;
        _ways = ways;
        _about = new TextRows(look) { Y = AboutAt, Width = Dim.Fill() };
        _about.Show((desk.Purpose, LineTone.Quiet));
        _note = new TextRows(look) { Width = Dim.Fill(), Height = NoteRows };
        _answer = new ListingView(look, width => Row.Of(desk.Lines(width))) { Width = Dim.Fill() };
        _presses =
        [
            .. ways.Select(way => new PressView(look, way.Name, () => Change(way.Do))),
            new PressView(look, "Close", Close),
        ];
        Add(_about, _note, _answer);
        _rows = [.. desk.Fields.Select((_, at) => new FieldRow(look, desk, at, FieldWidth, () => FocusOn(at + 1)))];
        foreach (FieldRow row in _rows)
        {
            row.Changed += Renew;
            row.Entered += Arrange;
            Add(row);
        }

        AddInRow(Pos.AnchorEnd(1), _presses);
        Renew();
    }

    public override IReadOnlyList<View> Stops => [.. _rows.Select(row => row.Field), _answer, .. _presses];

    public override string Keys =>
        $"Enter next field   Up and Down   PgUp and PgDn read on   "
        + $"{string.Concat(_ways.Where(way => way.Key is not null).Select(way => way.Told))}Esc back";

    private int At => Array.FindIndex(_rows, row => row.Field.HasFocus);

    public override bool Hear(Key key)
    {
        if (key == Key.PageDown)
            _answer.Scroll(+1);
        else if (key == Key.PageUp)
            _answer.Scroll(-1);
        else if (At >= 0 && key == Key.CursorDown)
            FocusOn(At + 1);
        else if (At > 0 && key == Key.CursorUp)
            FocusOn(At - 1);
        else if (At >= 0 && key == Key.Space && _desk.TakesWord(At))
            TakeNextWord();
        else if (Array.Find(_ways, way => way.Key is { } one && one == key) is { } way)
            Change(way.Do);
        else
            return false;
        return true;
    }

    public override void Renew()
    {
        foreach (FieldRow row in _rows)
            row.Renew();
        int at = Math.Max(0, At);
        AdviceLine about = _desk.About(at);
        _note.Show((_desk.TakesWord(at) ? $"{about.Text} Space: the next word." : about.Text, about.Tone));
        _answer.Renew(toTop: true);
    }

    /// <inheritdoc/>
    protected override void OnFrameChanged(in Rectangle frame)
    {
        base.OnFrameChanged(frame);
        Arrange();
    }

    private void Change(Func<AdviceLine?> change)
    {
        AdviceLine? told = change();
        Renew();
        if (told is not null)
            _note.Show((told.Text, told.Tone));
    }

    private void TakeNextWord()
    {
        _desk.NextWord(At);
        Renew();
    }

    private void FocusOn(int at)
    {
        if (at < _rows.Length)
        {
            Show(at);
            _rows[at].Field.SetFocus();
        }
        else
        {
            _answer.SetFocus();
        }
    }

    private void Arrange()
    {
        if (_rows is null)
            return;
        Show(Math.Max(0, At));
        Renew();
    }

    /// <summary>Gives the rows their places so that one of them can be seen.</summary>
    private void Show(int wanted)
    {
        int height = Math.Max(1, Frame.Height);
        int about = Math.Min(3, _about.RowsAt(Math.Max(8, Frame.Width)));
        int top = AboutAt + about + 1;
        int room = Math.Clamp(height - top - NoteRows - LeastAnswerRows - 2, Math.Min(2, _rows.Length), _rows.Length);
        _first = Math.Clamp(_first, wanted - room + 1, wanted);
        _first = Math.Clamp(_first, 0, _rows.Length - room);
        _about.Height = about;
        int longest = _desk.Fields.Max(name => name.Length);
        int label = Math.Clamp(longest + 3, LeastLabel, Math.Max(LeastLabel, Frame.Width * 45 / 100));
        for (int i = 0; i < _rows.Length; i++)
            _rows[i].Place(top + i - _first, label, i >= _first && i < _first + room, Edge(i, room));
        _note.Y = top + room;
        _answer.Y = top + room + NoteRows;
        _answer.Height = Dim.Fill(1);
    }

    /// <summary>The mark of a row beyond which there are more.</summary>
    private string Edge(int at, int room) =>
        at == _first && at > 0 ? "↑"
        : at == _first + room - 1 && at < _rows.Length - 1 ? "↓"
        : " ";
}

/// <summary>Something that can be done with a form.</summary>
/// <param name="Name">What it is called where it can be pressed.</param>
/// <param name="Do">Does it; what it gives is told in the note.</param>
/// <param name="Key">A key for it; null for none.</param>
/// <param name="Told">The key as the line at the bottom tells it.</param>
internal sealed record FormWay(string Name, Func<AdviceLine?> Do, Key? Key = null, string Told = "");
