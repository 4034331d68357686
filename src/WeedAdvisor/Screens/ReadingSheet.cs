using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview;

namespace WeedAdvisor.Screens;

/// <summary>Lines to read, over the sheet they belong to.</summary>
internal sealed class ReadingSheet : Sheet
{
    private readonly ListingView _list;

    public ReadingSheet(Look look, string title, Func<int, IEnumerable<AdviceLine>> lines)
        : base(look, title)
    {
        _list = new ListingView(look, width => Row.Of(lines(width))) { Y = 2, Width = Dim.Fill(), Height = Dim.Fill() };
        Add(_list);
    }

    public override IReadOnlyList<View> Stops => [_list];

    public override string Keys => "Up and Down   PgUp and PgDn   Esc back";
}
