using Terminal.Gui.Input;
using Terminal.Gui.Text;
using Terminal.Gui.ViewBase;

namespace WeedAdvisor.Screens;

/// <summary>
/// Rows of text that scroll. The arrow keys move from item to item, Enter picks one, Space ticks one. Without focus no
/// item stands out, unless something outside the list acts on the item under the cursor.
/// </summary>
internal class ListingView : View
{
    private readonly Look _look;
    private readonly Func<int, IReadOnlyList<Row>>? _build;
    private IReadOnlyList<Row> _rows = [];
    private int _builtFor = -1;
    private int _top;

    /// <param name="look">The look.</param>
    /// <param name="build">Gives the rows for a width.</param>
    public ListingView(Look look, Func<int, IReadOnlyList<Row>> build)
    {
        _look = look;
        _build = build;
        CanFocus = true;
        SetScheme(look.Scheme);
    }

    /// <param name="look">The look.</param>
    protected ListingView(Look look)
    {
        _look = look;
        CanFocus = true;
        SetScheme(look.Scheme);
    }

    /// <summary>
    /// Whether something outside the list acts on the item under the cursor. It is then marked with a <c>&gt;</c>
    /// whether or not the keys are here.
    /// </summary>
    public bool KeepsCursor { get; init; }

    /// <summary>The item under the cursor, from 0.</summary>
    public int At { get; private set; }

    /// <summary>Enter on an item.</summary>
    public event Action<int>? Picked;

    /// <summary>Space on an item.</summary>
    public event Action<int>? Ticked;

    /// <summary>The cursor has moved to another item.</summary>
    public event Action? Moved;

    /// <summary>Delete on an item.</summary>
    public event Action<int>? Deleted;

    private int Items => _rows.Count == 0 ? 0 : _rows[^1].Item + 1;

    private int Page => Math.Max(1, Viewport.Height);

    /// <summary>Builds the rows anew; the cursor stays where it can.</summary>
    /// <param name="toTop">Whether to go back to the first item.</param>
    public void Renew(bool toTop = false)
    {
        _builtFor = -1;
        if (toTop)
            (At, _top) = (0, 0);
        SetNeedsDraw();
    }

    /// <summary>Puts the cursor on an item.</summary>
    public void PointAt(int item)
    {
        At = Math.Max(0, item);
        SetNeedsDraw();
    }

    /// <summary>
    /// Reads on by a page, whether or not the keys are here: the rows move at once, not only the cursor.
    /// </summary>
    /// <param name="pages">Pages forward; negative for back.</param>
    public void Scroll(int pages)
    {
        Build();
        _top = Math.Clamp(_top + (pages * Math.Max(1, Page - 1)), 0, Math.Max(0, _rows.Count - Page));
        At = _rows.Count == 0 ? 0 : _rows[_top].Item;
        SetNeedsDraw();
    }

    /// <summary>Rows needed for everything at a width.</summary>
    public int RowsAt(int width) => RowsFor(Math.Max(8, width - 2)).Count;

    /// <summary>The rows for a width.</summary>
    protected virtual IReadOnlyList<Row> RowsFor(int width) => _build?.Invoke(width) ?? [];

    protected override bool OnDrawingContent(DrawContext? context)
    {
        Build();
        KeepInView();
        int width = Viewport.Width,
            height = Viewport.Height;
        for (int y = 0; y < height; y++)
        {
            int at = _top + y;
            Row? row = at < _rows.Count ? _rows[at] : null;
            bool here = row is not null && row.Item == At && (HasFocus || KeepsCursor);
            SetAttribute(
                here
                    ? HasFocus
                        ? _look.Cursor
                        : _look.Rest
                    : row is null
                        ? _look.Normal
                        : _look.Of(row.Tone)
            );
            Move(0, y);
            bool marked = here && KeepsCursor && (at == 0 || _rows[at - 1].Item != At);
            AddStr(Fit((marked ? ">" : " ") + (row?.Text ?? ""), width - 1));
            SetAttribute(_look.Quiet);
            bool more = (y == 0 && _top > 0) || (y == height - 1 && _top + height < _rows.Count);
            AddStr(
                !more ? " "
                : y == 0 ? "↑"
                : "↓"
            );
        }

        return true;
    }

    protected override bool OnKeyDown(Key key)
    {
        if (key == Key.CursorDown)
            Go(At + 1);
        else if (key == Key.CursorUp)
            Go(At - 1);
        else if (key == Key.PageDown)
            Go(At + Page);
        else if (key == Key.PageUp)
            Go(At - Page);
        else if (key == Key.Home)
            Go(0);
        else if (key == Key.End)
            Go(int.MaxValue);
        else if (key == Key.Enter && Items > 0)
            Picked?.Invoke(At);
        else if (key == Key.Space && Items > 0)
            Ticked?.Invoke(At);
        else if ((key == Key.Delete || key == Key.DeleteChar) && Items > 0)
            Deleted?.Invoke(At);
        else
            return false;
        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Flags.HasFlag(MouseFlags.WheeledDown))
            Go(At + 3);
        else if (mouse.Flags.HasFlag(MouseFlags.WheeledUp))
            Go(At - 3);
        else if (
            mouse.Flags.HasFlag(MouseFlags.LeftButtonClicked)
            && mouse.Position is { } at
            && _top + at.Y < _rows.Count
        )
            Click(_rows[_top + at.Y].Item);
        else
            return false;
        return true;
    }

    private static string Fit(string text, int width)
    {
        int columns = text.GetColumns();
        if (columns <= width)
            return text + new string(' ', width - columns);
        while (text.Length > 0 && text.GetColumns() > width)
            text = text[..^1];
        return text + new string(' ', width - text.GetColumns());
    }

    private void Click(int item)
    {
        SetFocus();
        bool again = At == item;
        Go(item);
        if (Ticked is not null)
            Ticked(item);
        else if (again)
            Picked?.Invoke(item);
    }

    private void Go(int item)
    {
        Build();
        int before = At;
        At = Math.Clamp(item, 0, Math.Max(0, Items - 1));
        SetNeedsDraw();
        if (At != before)
            Moved?.Invoke();
    }

    /// <summary>Builds the rows for the width that there is, unless they are there.</summary>
    protected void Build()
    {
        int width = Math.Max(8, Viewport.Width - 2);
        if (_builtFor == width)
            return;
        _rows = RowsFor(width);
        _builtFor = width;
        At = Math.Clamp(At, 0, Math.Max(0, Items - 1));
    }

    private void KeepInView()
    {
        int height = Math.Max(1, Viewport.Height);
        int first = 0,
            last = 0;
        for (int i = 0; i < _rows.Count; i++)
        {
            if (_rows[i].Item < At)
                first = i + 1;
            if (_rows[i].Item <= At)
                last = i;
        }

        if (last >= _top + height)
            _top = last - height + 1;
        if (first < _top)
            _top = first;
        _top = Math.Clamp(_top, 0, Math.Max(0, _rows.Count - height));
    }
}
