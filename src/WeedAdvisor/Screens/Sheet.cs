using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Screens;

/// <summary>A page laid over the interview for one task. Esc closes it.</summary>
internal abstract class Sheet : Pane
{
    private readonly TextRows _title;

    protected Sheet(Look look, string title)
        : base(look)
    {
        Width = Dim.Fill();
        Height = Dim.Fill(1);
        _title = new TextRows(look)
        {
            Width = Dim.Fill(),
            Height = 1,
            IsBar = true,
        };
        Add(_title);
        Heading = title;
    }

    /// <summary>It is done with.</summary>
    public event Action? Closed;

    /// <summary>The keys, for the line at the bottom.</summary>
    public virtual string Keys => "Tab next field   Enter choose   Esc close";

    /// <summary>
    /// Whether edits of the visit may be undone while it lies there. A sheet that works on a part of the visit would
    /// have it taken from under its hands.
    /// </summary>
    public virtual bool TakesUndo => false;

    protected string Heading
    {
        set => _title.Show((value, LineTone.Plain));
    }

    /// <summary>What Esc does.</summary>
    public virtual void Escape() => Close();

    /// <summary>Hears a key before the view that has the focus.</summary>
    public virtual bool Hear(Key key) => false;

    protected void Close() => Closed?.Invoke();
}
