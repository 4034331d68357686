using Terminal.Gui.ViewBase;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Screens;

/// <summary>A page to read, over the sheet they belong to.</summary>
internal sealed class ReadingSheet : Sheet
{
    private readonly DocumentView _page;

    /// <param name="look">The look.</param>
    /// <param name="title">The title.</param>
    /// <param name="page">Gives what the page says.</param>
    /// <param name="search">Asks for words to look for on a page.</param>
    public ReadingSheet(Look look, string title, Func<IEnumerable<Block>> page, Action<DocumentView> search)
        : base(look, title)
    {
        _page = new DocumentView(look, page)
        {
            Y = 2,
            Width = Dim.Fill(),
            Height = Dim.Fill(),
        };
        _page.Searched += search;
        Add(_page);
    }

    public override void Renew() => _page.Renew();

    public override IReadOnlyList<View> Stops => [_page];

    public override string Keys => "Up and Down   PgUp and PgDn   / find   Esc back";
}
