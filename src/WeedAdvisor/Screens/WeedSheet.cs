using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pickers;
using WeedAdvisor.Interview.Words;

namespace WeedAdvisor.Screens;

/// <summary>Names a weed seen: search, stage, cover.</summary>
internal sealed class WeedSheet : PickerSheet
{
    private readonly WeedPicker _picker;
    private readonly Action<Sheet> _open;
    private readonly ListingView _stages;
    private readonly TypeField _cover;
    private readonly TypeField _pots;
    private readonly PressView[] _presses;

    /// <param name="look">The look.</param>
    /// <param name="picker">The weed being named.</param>
    /// <param name="isNew">Whether it is one more weed.</param>
    /// <param name="open">Lays another sheet over this one.</param>
    public WeedSheet(Look look, WeedPicker picker, bool isNew, Action<Sheet> open)
        : base(look, isNew ? "Add a weed" : "Change a weed", "Weed name")
    {
        _picker = picker;
        _open = open;
        _stages = Marks(() => picker.Stages, stage => picker.Stage = stage, () => _cover!);
        _stages.X = Pos.Percent(50);
        _stages.Y = 5;
        _stages.Width = Dim.Fill();
        _stages.Height = Dim.Fill(8);
        _cover = new TypeField(look, picker.Cover)
        {
            X = Pos.Percent(50) + 1,
            Y = Pos.AnchorEnd(5),
            Width = 8,
        };
        _cover.Typed += () => picker.Cover = _cover.Said;
        _cover.Entered += Finish;
        _pots = new TypeField(look, picker.Pots)
        {
            X = Pos.Percent(50) + 1,
            Y = Pos.AnchorEnd(3),
            Width = 8,
        };
        _pots.Typed += () => picker.Pots = _pots.Said;
        _pots.Entered += Finish;
        _presses =
        [
            new PressView(look, isNew ? "Add" : "Keep", Finish),
            new PressView(look, "Find by features", FindByFeatures),
            .. isNew ? Array.Empty<PressView>() : [new PressView(look, "Remove", Remove)],
            new PressView(look, "Close", Close),
        ];
        Add(
            Label("How far along", Pos.Percent(50), 4),
            _stages,
            Label("Cover, percent (empty: not known)", Pos.Percent(50), Pos.AnchorEnd(6)),
            _cover,
            Label("Pots in percent, or: beside the pots", Pos.Percent(50), Pos.AnchorEnd(4)),
            _pots
        );
        AddInRow(Pos.AnchorEnd(1), _presses);
        Renew();
    }

    public override IReadOnlyList<View> Stops => [Search, Found, _stages, _cover, _pots, .. _presses];

    protected override IReadOnlyList<NameHit> Hits => _picker.Hits;

    protected override string Picked => _picker.Picked;

    protected override View After => _stages;

    protected override void LookFor(string text) => _picker.Text = text;

    protected override void Pick(int hit) => _picker.Pick(hit);

    protected override string About(int hit) => _picker.Identify(hit);

    protected override string? Accept() => _picker.Accept();

    public override string Keys => "Type to search   Down list   Enter pick   F9 by features   Tab next   Esc close";

    public override bool Hear(Key key)
    {
        if (key != Key.F9)
            return base.Hear(key);
        FindByFeatures();
        return true;
    }

    private void FindByFeatures() => _open(new IdentifySheet(Look, _picker.Narrowing, weed =>
            {
                _picker.Take(weed);
                Tell(null);
                Renew();
                After.SetFocus();
            }));

    private void Remove()
    {
        _picker.Remove();
        Close();
    }
}
