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
    /// Puts the cursor on the next line, from the one after the cursor round to it, that holds the words.
    /// </summary>
    /// <param name="words">The words, in any case.</param>
    /// <returns>What went wrong; null when they were found.</returns>
    public string? Find(string words)
    {
        Build();
        _sought = words.Trim();
        int found = Enumerable.Range(1, _lines.Length)
            .Select(step => (At + step) % _lines.Length)
            .FirstOrDefault(at => _lines[at].Text.Contains(_sought, StringComparison.OrdinalIgnoreCase), -1);
        if (_sought.Length == 0)
            return "Type the words to look for.";
        if (found < 0)
            return $"'{_sought}' stands nowhere on this page.";
        PointAt(found);
        return null;
    }

    protected override IReadOnlyList<Row> RowsFor(int width) => Row.Of(_lines = PageLines.Of(_page(), width));

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
