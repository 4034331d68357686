using System.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview;

namespace WeedAdvisor.Screens;

/// <summary>The season plan of the area: the strip above, what goes on and what it costs below. Every wish is planned at once.</summary>
internal sealed class SeasonSheet : Sheet
{
    private const int NoteRows = 2;

    private readonly SeasonDesk _desk;
    private readonly TextRows _note;
    private readonly StripView _strip;
    private readonly ListingView _lines;

    /// <param name="look">The look.</param>
    /// <param name="desk">The plan.</param>
    /// <param name="details">Opens the work and the escapes.</param>
    public SeasonSheet(Look look, SeasonDesk desk, Action details)
        : base(look, $"The year: {desk.AreaName}")
    {
        _desk = desk;
        _note = new TextRows(look) { Y = 1, Width = Dim.Fill(), Height = NoteRows };
        _strip = new StripView(look, desk) { Y = 1 + NoteRows, Width = Dim.Fill(), Height = desk.Plan is null ? 0 : 1 };
        _lines = new ListingView(look, width => Row.Of(desk.Lines(width))) { Width = Dim.Fill(), Height = Dim.Fill() };
        _lines.Picked += _ => details();
        _strip.Moved += ShowWeek;
        Details = details;
        Add(_note, _strip, _lines);
        Arrange();
        ShowWeek();
    }

    public override IReadOnlyList<View> Stops => _desk.Plan is null ? [_lines] : [_strip, _lines];

    public override string Keys => _desk.Plan is null
        ? "Esc back"
        : "←→ week  Space close  M month  D drop  R rotate  +/- most  0 reset  Enter work";

    private Action Details { get; }

    public override bool Hear(Key key)
    {
        if (_desk.Plan is null)
            return false;
        if (key == Key.Space)
            Change(_desk.ToggleWeek);
        else if (key == Key.M || key == Key.M.WithShift)
            Change(_desk.ToggleMonth);
        else if (key == Key.D || key == Key.D.WithShift)
            Change(_desk.DropOrTakeBack);
        else if (key == Key.R || key == Key.R.WithShift)
            Change(_desk.NextRotation);
        else if (key == new Key('+'))
            Change(() => _desk.AllowMore(+1));
        else if (key == new Key('-'))
            Change(() => _desk.AllowMore(-1));
        else if (key == Key.D0)
            Change(_desk.Reset);
        else if (key == Key.Enter)
            Details();
        else if (key == Key.PageDown)
            _lines.Scroll(+1);
        else if (key == Key.PageUp)
            _lines.Scroll(-1);
        else
            return false;
        return true;
    }

    public override void Renew()
    {
        ShowWeek();
        _strip.SetNeedsDraw();
        _lines.Renew(toTop: true);
    }

    /// <inheritdoc/>
    protected override void OnFrameChanged(in Rectangle frame)
    {
        base.OnFrameChanged(frame);
        Arrange();
    }

    // The lines keep at least five rows; a strip that is too high for that loses its last weeds, which cost least.
    private void Arrange()
    {
        if (_lines is null)
            return;
        const int LeastLines = 5;
        int rows = Math.Clamp(_strip.Rows, 0, Math.Max(0, Frame.Height - 1 - NoteRows - LeastLines));
        _strip.Height = rows;
        _lines.Y = 1 + NoteRows + rows;
    }

    private void Change(Action change)
    {
        change();
        Renew();
    }

    private void ShowWeek()
    {
        AdviceLine about = _desk.AboutWeek();
        _note.Show((about.Text, about.Tone));
    }
}
