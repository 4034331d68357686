using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace WeedAdvisor.Screens;

/// <summary>Something to press with Enter or Space. It has no letter of its own, so typing never fires it.</summary>
internal sealed class PressView : View
{
    private readonly Look _look;

    public PressView(Look look, string label, Action press)
    {
        _look = look;
        Label = $"[ {label} ]";
        CanFocus = true;
        Width = Label.Length;
        Height = 1;
        SetScheme(look.Scheme);
        Pressed = press;
    }

    public string Label { get; }

    public Action Pressed { get; }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        SetAttribute(HasFocus ? _look.Cursor : _look.Normal);
        Move(0, 0);
        AddStr(Label);
        return true;
    }

    protected override bool OnKeyDown(Key key)
    {
        if (key != Key.Enter && key != Key.Space)
            return false;
        Pressed();
        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (!mouse.Flags.HasFlag(MouseFlags.LeftButtonClicked))
            return false;
        Pressed();
        return true;
    }
}
