using System.Drawing;
using System.Text;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Desks.Season;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Screens;

/// <summary>
/// The season plan of the area: what it costs, the strip, what goes on. Every wish is planned at once.
/// </summary>
internal sealed class SeasonSheet : Sheet
{
    private const int MoneyAt = 1,
        LeastLines = 5,
        MostNoteRows = 3,
        WidthForAll = 80,
        WidthForWords = 119;

    private readonly SeasonDesk _desk;
    private readonly Action _details,
        _help;
    private readonly TextRows _money,
        _change,
        _key;
    private readonly StripView _strip;
    private readonly ListingView _lines;

    /// <param name="look">The look.</param>
    /// <param name="desk">The plan.</param>
    /// <param name="later">Does something once the screen is drawn.</param>
    /// <param name="details">Opens the work and the escapes.</param>
    /// <param name="help">Opens the help on the keys.</param>
    public SeasonSheet(Look look, SeasonDesk desk, Action<Action> later, Action details, Action help)
        : base(look, desk.Title)
    {
        _desk = desk;
        _details = details;
        _help = help;
        _money = new TextRows(look) { Y = MoneyAt, Width = Dim.Fill() };
        _change = new TextRows(look) { Width = Dim.Fill() };
        _strip = new StripView(look, desk) { Width = Dim.Fill() };
        _key = new TextRows(look) { Width = Dim.Fill(), Height = 1 };
        _lines = new ListingView(look, width => Row.Of(desk.Lines(width))) { Width = Dim.Fill(), Height = Dim.Fill() };
        _lines.Picked += _ => Open();
        _strip.Moved += Renew;
        Add(_money, _change, _strip, _key, _lines);
        Renew();
        if (!desk.IsRead)
            later(Read);
    }

    public override IReadOnlyList<View> Stops => _desk.Plan is null ? [_lines] : [_strip, _lines];

    public override string Keys =>
        _desk.Plan is null ? "F1 Keys   Esc back"
        : Columns >= WidthForWords
            ? "F1 Keys  ←→ week  ↑↓ application  Space close  M month  D drop  K keep  R rotate  +-  U undo  0 reset  "
                + "Enter work  Esc"
        : Columns < WidthForAll ? "F1 Keys  ←→ week  Space close  D drop  Enter work  Esc back"
        : "F1 Keys  Space close  M month  D drop  K keep  R rotate  +-  U undo  Enter  Esc";

    // The bar is written before a new size has come down to the sheet.
    private int Columns => SuperView?.Frame.Width ?? Frame.Width;

    public override bool Hear(Key key)
    {
        if (key == Key.F1)
        {
            _help();
            return true;
        }

        if (_desk.Plan is null)
            return false;
        if (key == Key.Enter)
            Open();
        else if (key == Key.PageDown)
            _lines.Scroll(+1);
        else if (key == Key.PageUp)
            _lines.Scroll(-1);
        else if (Wish(key) is { } change)
            Change(change);
        else
            return false;
        return true;
    }

    public override void Renew()
    {
        Heading = _desk.Title;
        _money.Show((_desk.Money.Text, _desk.Money.Tone));
        _change.Show((_desk.LastChange.Text, _desk.LastChange.Tone));
        _key.Show((_desk.Plan is null ? "" : SeasonDesk.Key, LineTone.Quiet));
        _strip.SetNeedsDraw();
        _lines.Renew(toTop: true);
        Arrange();
        ShowApplication();
    }

    /// <inheritdoc/>
    protected override void OnFrameChanged(in Rectangle frame)
    {
        base.OnFrameChanged(frame);
        Arrange();
    }

    // In a low window the application under the cursor must not stay below the edge.
    private void ShowApplication()
    {
        int at = _desk.LineOfApplication(Math.Max(8, _lines.Viewport.Width - 2));
        if (at >= 0)
            _lines.PointAt(at);
    }

    private Action? Wish(Key key) =>
        key == Key.Space ? _desk.ToggleWeek
        : key == Key.Z.WithCtrl ? _desk.Undo
        : (char)Rune.ToLowerInvariant(key.AsRune).Value switch
        {
            'm' => _desk.ToggleMonth,
            'd' => _desk.DropOrTakeBack,
            'k' => _desk.KeepOrLetGo,
            'r' => _desk.NextRotation,
            '+' or '=' => () => _desk.AllowMore(+1),
            '-' => () => _desk.AllowMore(-1),
            'u' => _desk.Undo,
            '0' => _desk.Reset,
            _ => null,
        };

    // The sheet may have been left before its turn came.
    private void Read()
    {
        _desk.Read();
        if (SuperView is null)
            return;
        Renew();
        if (_lines.HasFocus)
            Enter();
    }

    private void Open()
    {
        if (_desk.Plan is not null)
            _details();
    }

    private void Change(Action change)
    {
        change();
        Renew();
    }

    // The lines keep a few rows; a strip that is too high for that loses its last weeds, which cost least.
    private void Arrange()
    {
        if (_lines is null)
            return;
        int width = Math.Max(8, Frame.Width);
        int money = Math.Clamp(_money.RowsAt(width), 1, MostNoteRows),
            change = Math.Clamp(_change.RowsAt(width), 1, MostNoteRows);
        _money.Height = money;
        _change.Y = MoneyAt + money;
        _change.Height = change;
        int top = MoneyAt + money + change;
        int rows = Math.Clamp(_strip.Rows, 0, Math.Max(0, Frame.Height - top - 1 - LeastLines));
        _strip.Y = top;
        _strip.Height = rows;
        _key.Y = top + rows;
        _lines.Y = top + rows + (_desk.Plan is null ? 0 : 1);
    }
}
