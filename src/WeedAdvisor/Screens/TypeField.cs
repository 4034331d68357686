using Terminal.Gui.Input;
using Terminal.Gui.Views;

namespace WeedAdvisor.Screens;

/// <summary>A line to type in. Enter is heard by whoever owns it.</summary>
internal sealed class TypeField : TextField
{
    public TypeField(Look look, string text = "")
    {
        Height = 1;
        SetScheme(look.FieldScheme);
        Value = text;
        MoveEnd();
    }

    /// <summary>Enter.</summary>
    public event Action? Entered;

    /// <summary>The text has changed.</summary>
    public event Action? Typed;

    /// <summary>The text.</summary>
    public string Said => Value ?? "";

    /// <summary>Replaces the text.</summary>
    public void Put(string text)
    {
        Value = text;
        MoveEnd();
    }

    protected override bool OnKeyDown(Key key)
    {
        if (key == Key.Enter)
        {
            Entered?.Invoke();
            return true;
        }

        return base.OnKeyDown(key);
    }

    protected override void OnTextChanged()
    {
        base.OnTextChanged();
        Typed?.Invoke();
    }
}
