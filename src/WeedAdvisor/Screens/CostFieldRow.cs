using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview;

namespace WeedAdvisor.Screens;

/// <summary>A number in one row: what it is, where it is typed, a bar of its size.</summary>
internal sealed class CostFieldRow : View
{
    private const int LabelColumns = 23, FieldColumns = 12;

    private readonly CostField _field;
    private readonly TextRows _beside;

    /// <param name="look">The look.</param>
    /// <param name="desk">Where it is reckoned.</param>
    /// <param name="field">The number.</param>
    public CostFieldRow(Look look, CostDesk desk, CostField field)
    {
        _field = field;
        CanFocus = true;
        Width = Dim.Fill();
        Height = 1;
        SetScheme(look.Scheme);
        var label = new TextRows(look) { Height = 1, Width = LabelColumns };
        label.Show((field.Label, LineTone.Plain));
        _beside = new TextRows(look) { X = LabelColumns + FieldColumns, Height = 1, Width = Dim.Fill() };
        Field = new TypeField(look, field.Text) { X = LabelColumns, Width = FieldColumns };
        Field.Typed += () =>
        {
            desk.Type(field, Field.Said);
            Changed?.Invoke();
        };
        Field.HasFocusChanged += (_, _) =>
        {
            if (Field.HasFocus)
                Field.MoveEnd();
        };
        Add(label, Field, _beside);
    }

    /// <summary>What is typed has changed.</summary>
    public event Action? Changed;

    public TypeField Field { get; }

    /// <summary>Shows what has changed.</summary>
    public void Renew()
    {
        if (Field.Said != _field.Text)
            Field.Put(_field.Text);
        AdviceLine beside = _field.Beside;
        _beside.Show((beside.Text, beside.Tone));
    }
}
