using System.Drawing;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Desks;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Screens;

/// <summary>A field in one row: what it is, where it is typed, and what is wrong or may be written.</summary>
internal sealed class FieldRow : View
{
    private readonly IFieldDesk _desk;
    private readonly int _field;
    private readonly int _typed;
    private readonly TextRows _label;
    private readonly TextRows _beside;
    private string _mark = "";
    private int _besideAt;

    /// <param name="look">The look.</param>
    /// <param name="desk">What the field belongs to.</param>
    /// <param name="field">Which of its fields, from 0.</param>
    /// <param name="typed">Columns to type in.</param>
    /// <param name="next">Goes to the next field.</param>
    public FieldRow(Look look, IFieldDesk desk, int field, int typed, Action next)
    {
        _desk = desk;
        _field = field;
        _typed = typed;
        CanFocus = true;
        Width = Dim.Fill();
        Height = 1;
        SetScheme(look.Scheme);
        _label = new TextRows(look) { Height = 1 };
        _beside = new TextRows(look) { Height = 1, Width = Dim.Fill() };
        Field = new TypeField(look, desk.TextOf(field)) { Width = typed };
        Field.Typed += () =>
        {
            desk.Type(field, Field.Said);
            Changed?.Invoke();
        };
        Field.Entered += next;
        Field.HasFocusChanged += (_, _) =>
        {
            if (!Field.HasFocus)
                return;

            // What is there is added to, not written over.
            Field.MoveEnd();
            Entered?.Invoke();
        };
        Add(_label, Field, _beside);
    }

    /// <summary>What is typed has changed.</summary>
    public event Action? Changed;

    /// <summary>The keys have come here.</summary>
    public event Action? Entered;

    public TypeField Field { get; }

    /// <summary>Gives it its place.</summary>
    /// <param name="y">The row.</param>
    /// <param name="label">Columns for what it is.</param>
    /// <param name="isShown">Whether it can be seen.</param>
    /// <param name="mark">A mark before what it is.</param>
    public void Place(int y, int label, bool isShown = true, string mark = "")
    {
        _mark = mark;
        _besideAt = label + _typed;
        _label.Width = label;
        Field.X = label;
        _beside.X = _besideAt;

        // A row out of sight is not hidden but moved off: Tab must be able to reach its field.
        Y = isShown ? y : -2;
    }

    /// <summary>Shows what has changed.</summary>
    public void Renew()
    {
        if (Field.Said != _desk.TextOf(_field))
            Field.Put(_desk.TextOf(_field));
        _label.Show(($"{_mark}{_desk.Fields[_field]}", LineTone.Plain));

        // One column stays empty before it.
        AdviceLine beside = _desk.Beside(_field, Math.Max(0, Frame.Width - _besideAt - 1));
        _beside.Show((beside.Tone == LineTone.Warning ? $"! {beside.Text}" : beside.Text, beside.Tone));
    }

    /// <inheritdoc/>
    protected override void OnFrameChanged(in Rectangle frame)
    {
        base.OnFrameChanged(frame);
        if (_beside is not null)
            Renew();
    }
}
