using Terminal.Gui.ViewBase;

namespace WeedAdvisor.Screens;

/// <summary>
/// A part of the screen that takes the keys: it says where Tab goes, and draws itself anew when told.
/// </summary>
internal abstract class Pane : View
{
    protected Pane(Look look)
    {
        Look = look;
        CanFocus = true;
        SetScheme(look.Scheme);
    }

    /// <summary>The views that Tab visits, in order.</summary>
    public abstract IReadOnlyList<View> Stops { get; }

    protected Look Look { get; }

    /// <summary>Shows what has changed.</summary>
    public virtual void Renew() { }

    /// <summary>Takes over what is typed but not yet given. False when it is wrong, which the pane then says.</summary>
    public virtual bool Commit() => true;

    /// <summary>Takes back what is typed but not yet given. False when nothing is.</summary>
    public virtual bool TakeBack() => false;

    /// <summary>Puts the keys where this pane begins.</summary>
    public virtual void Enter() => (Stops.Count > 0 ? Stops[0] : this).SetFocus();

    /// <summary>Puts things to press in one row.</summary>
    protected void AddInRow(Pos y, params PressView[] presses)
    {
        int x = 1;
        foreach (PressView press in presses)
        {
            press.X = x;
            press.Y = y;
            x += press.Label.Length + 1;
            Add(press);
        }
    }
}
