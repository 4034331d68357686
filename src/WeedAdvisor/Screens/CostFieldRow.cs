using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Desks.Costs;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Screens;

/// <summary>A number of the costs in one row: what it is, where it is typed, its bar or what is wrong.</summary>
internal sealed class CostFieldRow : View
{
    private const int FieldWidth = 11;

    private static readonly int s_label = CostField.All.Max(field => field.Label.Length) + 2;

    private readonly CostDesk _desk;
    private readonly CostField _field;
    private readonly TextRows _beside;

    /// <param name="look">The look.</param>
    /// <param name="desk">The costs.</param>
    /// <param name="field">The number.</param>
    /// <param name="next">Goes to the next field.</param>
    public CostFieldRow(Look look, CostDesk desk, CostField field, Action next)
    {
        _desk = desk;
        _field = field;
        CanFocus = true;
        Width = Dim.Fill();
        Height = 1;
        SetScheme(look.Scheme);
        var label = new TextRows(look) { Height = 1, Width = s_label };
        label.Show((field.Label, LineTone.Plain));
        _beside = new TextRows(look) { Height = 1, X = s_label + FieldWidth, Width = Dim.Fill() };
        Field = new TypeField(look, desk.TextOf(field)) { X = s_label, Width = FieldWidth };
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
            Field.MoveEnd();
            Changed?.Invoke();
        };
        Add(label, Field, _beside);
        Renew();
    }

    /// <summary>What is typed has changed, or the keys have come here.</summary>
    public event Action? Changed;

    public TypeField Field { get; }

    /// <summary>Moves the number to its next stop.</summary>
    public void Step(int direction)
    {
        _desk.Move(_field, direction);
        Field.Put(_desk.TextOf(_field));
    }

    /// <summary>Shows what has changed.</summary>
    public void Renew()
    {
        AdviceLine beside = _desk.Beside(_field);
        _beside.Show((beside.Text, beside.Tone));
    }
}
