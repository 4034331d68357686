using Terminal.Gui.ViewBase;

namespace WeedAdvisor.Screens;

/// <summary>The line between the two panes.</summary>
internal sealed class RuleView : View
{
    private readonly Look _look;

    public RuleView(Look look)
    {
        _look = look;
        CanFocus = false;
        SetScheme(look.Scheme);
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        SetAttribute(_look.Quiet);
        for (int y = 0; y < Viewport.Height; y++)
        {
            Move(0, y);
            AddStr("│");
        }

        return true;
    }
}
