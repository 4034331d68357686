using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pickers;
using WeedAdvisor.Interview.Words;

namespace WeedAdvisor.Screens;

/// <summary>Tells an earlier application: treatment, day, result, what came through.</summary>
internal sealed class PastSheet : PickerSheet
{
    private readonly PastPicker _picker;
    private readonly TypeField _day;
    private readonly ListingView _results;
    private readonly TypeField _escaped;
    private readonly PressView[] _presses;
    private readonly Action _more;

    /// <param name="look">The look.</param>
    /// <param name="picker">The application being told.</param>
    /// <param name="isNew">Whether it is one more application.</param>
    /// <param name="open">Lays another sheet over this one.</param>
    public PastSheet(Look look, PastPicker picker, bool isNew, Action<Sheet> open)
        : base(look, isNew ? "Add an application" : "Change an application", "Treatment")
    {
        _picker = picker;
        _more = () => open(new FormSheet(look, picker.More));
        Pos right = Pos.Percent(50);
        _day = new TypeField(look, picker.Day)
        {
            X = right + 1,
            Y = 5,
            Width = 12,
        };
        _results = Marks(() => picker.Results, result => picker.Result = result, () => _escaped!);
        _results.X = right;
        _results.Y = 8;
        _results.Width = Dim.Fill();
        _results.Height = 4;
        _escaped = new TypeField(look, picker.Escaped)
        {
            X = right + 1,
            Y = 14,
            Width = Dim.Fill(1),
        };
        _day.Typed += () => picker.Day = _day.Said;
        _day.Entered += () => _results.SetFocus();
        _escaped.Typed += () => picker.Escaped = _escaped.Said;
        _escaped.Entered += Finish;
        _presses =
        [
            new PressView(look, isNew ? "Add" : "Keep", Finish),
            new PressView(look, "More", _more),
            .. isNew ? Array.Empty<PressView>() : [new PressView(look, "Remove", Remove)],
            new PressView(look, "Close", Close),
        ];
        Add(
            Label("Day, as 2026-04-30 (empty: not known)", right, 4),
            _day,
            Label("How it turned out", right, 7),
            _results,
            Label("Weeds that came through", right, 13),
            _escaped
        );
        AddInRow(Pos.AnchorEnd(1), _presses);
        Renew();
    }

    public override IReadOnlyList<View> Stops => [Search, Found, _day, _results, _escaped, .. _presses];

    public override string Keys => "Type to search   Down list   Enter pick   F9 more of it   Tab next   Esc close";

    public override bool Hear(Key key)
    {
        if (key != Key.F9)
            return base.Hear(key);
        _more();
        return true;
    }

    /// <summary>Whoever has told more comes back to what is picked.</summary>
    public override void Enter()
    {
        Renew();
        base.Enter();
    }

    protected override IReadOnlyList<NameHit> Hits => _picker.Hits;

    protected override string Picked => _picker.Picked;

    protected override View After => _day;

    protected override void LookFor(string text) => _picker.Text = text;

    protected override void Pick(int hit) => _picker.Pick(hit);

    protected override string? Accept() => _picker.Accept();

    private void Remove()
    {
        _picker.Remove();
        Close();
    }
}
