using System.Collections.Immutable;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview;

namespace WeedAdvisor.Screens;

/// <summary>What weeds cost here and what each way out costs: numbers above, moved or typed; figures below, at once.</summary>
internal sealed class CostSheet : Sheet
{
    private const int FieldsAt = 2;

    private readonly CostDesk _desk;
    private readonly CostFieldRow[] _rows;
    private readonly ListingView _lines;
    private readonly Action<string> _open;
    private ImmutableArray<AdviceLine> _shown = [];

    /// <param name="look">The look.</param>
    /// <param name="desk">The numbers.</param>
    /// <param name="open">Opens a way, by its id.</param>
    public CostSheet(Look look, CostDesk desk, Action<string> open)
        : base(look, $"What it costs: {desk.AreaName}")
    {
        _desk = desk;
        _open = open;
        _rows = [.. desk.Fields.Select((field, at) => new CostFieldRow(look, desk, field) { Y = FieldsAt + at })];
        foreach (CostFieldRow row in _rows)
        {
            row.Changed += Renew;
            row.Field.Entered += () => _lines?.SetFocus();
            Add(row);
        }

        _lines = new ListingView(look, width => Row.Of(_shown = desk.Lines(width)))
        {
            Y = FieldsAt + _rows.Length + 1,
            Width = Dim.Fill(),
            Height = Dim.Fill(),
        };
        _lines.Picked += OpenWay;
        Add(_lines);
        Renew();
    }

    public override IReadOnlyList<View> Stops => [.. _rows.Select(row => row.Field), _lines];

    public override string Keys => "+ and - move the number   Up and Down   PgUp PgDn read on   Enter way   Esc back";

    private int At => Array.FindIndex(_rows, row => row.Field.HasFocus);

    public override bool Hear(Key key)
    {
        int at = At;
        if (at >= 0 && key == new Key('+'))
            _desk.Step(_desk.Fields[at], +1);
        else if (at >= 0 && key == new Key('-'))
            _desk.Step(_desk.Fields[at], -1);
        else if (at >= 0 && key == Key.CursorDown)
            Stops[at + 1].SetFocus();
        else if (at > 0 && key == Key.CursorUp)
            Stops[at - 1].SetFocus();
        else if (at >= 0 && key == Key.PageDown)
            _lines.Scroll(+1);
        else if (at >= 0 && key == Key.PageUp)
            _lines.Scroll(-1);
        else
            return false;
        if (at >= 0 && key != Key.PageDown && key != Key.PageUp)
            Renew();
        return true;
    }

    public override void Renew()
    {
        foreach (CostFieldRow row in _rows)
            row.Renew();
        _lines?.Renew();
    }

    private void OpenWay(int line)
    {
        if (line < _shown.Length && _shown[line].Action is { } way)
            _open(way);
    }
}
