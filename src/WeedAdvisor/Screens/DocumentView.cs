using System.Collections.Immutable;
using System.Text;
using Terminal.Gui.Input;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Screens;

/// <summary>
/// Any document on the screen. The arrow keys go from line to line, Enter opens the action that a line is about,
/// <c>/</c> looks for words and N for the same words further on.
/// </summary>
internal sealed class DocumentView : ListingView
{
    private readonly Func<IEnumerable<Block>> _page;
    private ImmutableArray<AdviceLine> _lines = [];
    private string _sought = "";
    private int _width;

    /// <param name="look">The look.</param>
    /// <param name="page">Gives what the page says.</param>
    public DocumentView(Look look, Func<IEnumerable<Block>> page)
        : base(look)
    {
        _page = page;
        Picked += Open;
    }

    /// <summary>Enter on a line that is about an action: the action's id.</summary>
    public event Action<string>? Opened;

    /// <summary>Somebody wants to look for words.</summary>
    public event Action<DocumentView>? Searched;

    /// <summary>Puts the cursor on the first line that is about an action.</summary>
    public void PointAtFirstAction()
    {
        Build();
        int first = _lines.TakeWhile(line => line.Action is null).Count();
        if (first < _lines.Length)
            PointAt(first);
    }

    /// <summary>
    /// Puts the cursor on the next line, from the one after the cursor round to it, where the words begin; they may go
    /// on over the lines below.
    /// </summary>
    /// <param name="words">The words, in any case.</param>
    /// <returns>What went wrong; null when they were found.</returns>
    public string? Find(string words)
    {
        Build();
        _sought = string.Join(' ', words.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        if (_sought.Length == 0)
            return "Type the words to look for.";
        if (PageSearch.Next(_lines, _sought, At) is not { } found)
            return $"'{_sought}' stands nowhere on this page.";
        PointAt(found);
        return null;
    }

    // What the cursor is on keeps it when lines are broken anew for another width.
    protected override IReadOnlyList<Row> RowsFor(int width)
    {
        ImmutableArray<AdviceLine> before = _lines;
        _lines = PageLines.Of(_page(), width);
        if (width != _width && PageSearch.Same(before, At, _lines) is { } same)
            PointAt(same);
        _width = width;
        return Row.Of(_lines);
    }

    protected override bool OnKeyDown(Key key)
    {
        if (key == new Key('/'))
            Searched?.Invoke(this);
        else if (Rune.ToLowerInvariant(key.AsRune).Value == 'n' && _sought.Length > 0)
            Find(_sought);
        else
            return base.OnKeyDown(key);
        return true;
    }

    private void Open(int line)
    {
        if (line < _lines.Length && _lines[line].Action is { } action)
            Opened?.Invoke(action);
    }
}
