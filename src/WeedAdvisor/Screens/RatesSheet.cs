using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Desks.Rates;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Planning.Rates.Forms;

namespace WeedAdvisor.Screens;

/// <summary>The rate sums, by group.</summary>
internal sealed class RatesSheet : Sheet
{
    private const int AboutRows = 5;

    private readonly RateDesks _desks;
    private readonly ListingView _list;
    private readonly TextRows _about;

    /// <param name="look">The look.</param>
    /// <param name="desks">The sums.</param>
    /// <param name="open">Opens a sum.</param>
    public RatesSheet(Look look, RateDesks desks, Action<RateForm> open)
        : base(look, "Rates: what is to be worked out?")
    {
        _desks = desks;
        _list = new ListingView(look, width => Row.Of(desks.Entries(), width))
        {
            Y = 2,
            Width = Dim.Fill(),
            Height = Dim.Fill(AboutRows + 1),
        };
        _about = new TextRows(look)
        {
            Y = Pos.AnchorEnd(AboutRows),
            Width = Dim.Fill(),
            Height = AboutRows,
        };
        _list.Moved += Renew;
        _list.HasFocusChanged += (_, _) => Renew();
        _list.Picked += at => open(desks.Forms[at]);
        Add(_list, _about);
        Renew();
    }

    public override IReadOnlyList<View> Stops => [_list];

    public override string Keys => "Up and Down   Enter open   Esc close";

    public override void Renew()
    {
        _list.Renew();
        _about.Show((RateDesks.About(_desks.Forms[_list.At]), LineTone.Quiet));
    }
}
