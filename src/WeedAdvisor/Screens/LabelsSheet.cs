using System.Collections.Immutable;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Desks.Labels;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Screens;

/// <summary>
/// The treatments whose labels can be copied: those of the book, those that wait here, then all others.
/// </summary>
internal sealed class LabelsSheet : Sheet
{
    private const int AboutRows = 3;

    private readonly ListingView _list;
    private readonly TextRows _about;
    private readonly LabelShelf _shelf;
    private ImmutableArray<LabelEntry> _entries = [];

    /// <param name="look">The look.</param>
    /// <param name="shelf">The label book.</param>
    /// <param name="open">Opens the label of a treatment.</param>
    public LabelsSheet(Look look, LabelShelf shelf, Action<string> open)
        : base(look, "Your labels: which bag or bottle do you have in hand?")
    {
        _shelf = shelf;
        _list = new ListingView(look, width => Row.Of((_entries = LabelEntry.Of(shelf)).Select(Told), width))
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
        _list.HasFocusChanged += (_, _) => Renew();
        _list.Picked += at => open(_entries[at].Treatment);
        Add(_list, _about);
        Renew();
    }

    public override IReadOnlyList<View> Stops => [_list];

    public override string Keys => "Up and Down   Enter copy its label   Esc close";

    public override void Renew()
    {
        _list.Renew();
        _about.Show(($"The book is {_shelf.FilePath}. {LabelEntry.Purpose}", LineTone.Quiet));
    }

    private static (string Mark, string Text) Told(LabelEntry entry) => ($"{entry.Mark}  ", entry.Text);
}
