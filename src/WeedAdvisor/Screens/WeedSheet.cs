using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview;

namespace WeedAdvisor.Screens;

/// <summary>Names a weed seen: search, stage, cover.</summary>
internal sealed class WeedSheet : PickerSheet
{
    private readonly WeedPicker _picker;
    private readonly ListingView _stages;
    private readonly TypeField _cover;
    private readonly PressView[] _presses;

    public WeedSheet(Look look, WeedPicker picker, bool isNew)
        : base(look, isNew ? "Add a weed" : "Change a weed", "Weed name")
    {
        _picker = picker;
        _stages = Marks(() => picker.Stages, stage => picker.Stage = stage, () => _cover!);
        _stages.X = Pos.Percent(50);
        _stages.Y = 5;
        _stages.Width = Dim.Fill();
        _stages.Height = Dim.Fill(8);
        _cover = new TypeField(look, picker.Cover) { X = Pos.Percent(50) + 1, Y = Pos.AnchorEnd(5), Width = 8 };
        _cover.Typed += () => picker.Cover = _cover.Said;
        _cover.Entered += Finish;
        _presses =
        [
            new PressView(look, isNew ? "Add" : "Keep", Finish),
            .. isNew ? Array.Empty<PressView>() : [new PressView(look, "Remove", Remove)],
            new PressView(look, "Close", Close),
        ];
        Add(
            Label("How far along", Pos.Percent(50), 4), _stages,
            Label("Cover, percent (empty: not known)", Pos.Percent(50), Pos.AnchorEnd(6)), _cover);
        AddInRow(Pos.AnchorEnd(1), _presses);
        Renew();
    }

    public override IReadOnlyList<View> Stops => [Search, Found, _stages, _cover, .. _presses];

    protected override IReadOnlyList<NameHit> Hits => _picker.Hits;

    protected override string Picked => _picker.Picked;

    protected override View After => _stages;

    protected override void LookFor(string text) => _picker.Text = text;

    protected override void Pick(int hit) => _picker.Pick(hit);

    protected override string About(int hit) => _picker.Identify(hit);

    protected override string? Accept() => _picker.Accept();

    private void Remove()
    {
        _picker.Remove();
        Close();
    }
}
