using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Screens;

/// <summary>Text that is only read: wrapped, in one tone, not reached by the keys.</summary>
internal sealed class TextRows : View
{
    private readonly Look _look;
    private (string Text, LineTone Tone)[] _parts = [];

    public TextRows(Look look)
    {
        _look = look;
        CanFocus = false;
        SetScheme(look.Scheme);
    }

    /// <summary>Whether to draw in the look of a bar.</summary>
    public bool IsBar { get; init; }

    public void Show(params (string Text, LineTone Tone)[] parts)
    {
        _parts = parts;
        SetNeedsDraw();
    }

    /// <summary>Rows needed at a width.</summary>
    public int RowsAt(int width) => Rows(width).Count;

    protected override bool OnDrawingContent(DrawContext? context)
    {
        var rows = Rows(Viewport.Width);
        for (int y = 0; y < Viewport.Height; y++)
        {
            (string text, LineTone tone) = y < rows.Count ? rows[y] : ("", LineTone.Plain);
            SetAttribute(IsBar ? _look.Bar : _look.Of(tone));
            Move(0, y);
            AddStr(text.Length > Viewport.Width ? text[..Viewport.Width] : text.PadRight(Viewport.Width));
        }

        return true;
    }

    private List<(string Text, LineTone Tone)> Rows(int width)
    {
        var rows = new List<(string, LineTone)>();
        if (IsBar)
            return [.. _parts.Select(part => (" " + part.Text, part.Tone))];
        foreach ((string text, LineTone tone) in _parts)
        {
            foreach (string line in Wrapping.Lines(text, width, " ", " "))
                rows.Add((line, tone));
        }

        return rows;
    }
}
