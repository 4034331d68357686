using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Desks;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Screens;

/// <summary>A field of a form in one row: what it is, where it is typed, and what is wrong or may be written.</summary>
internal sealed class FormFieldRow : View
{
    private const int LeastLabel = 12, FieldWidth = 22;

    private readonly IFormDesk _desk;
    private readonly int _field;
    private readonly TextRows _label;
    private readonly TextRows _beside;
    private char _edge = ' ';

    /// <param name="look">The look.</param>
    /// <param name="desk">The form.</param>
    /// <param name="field">Which of its fields, from 0.</param>
    /// <param name="next">Goes to the next field.</param>
    public FormFieldRow(Look look, IFormDesk desk, int field, Action next)
    {
        _desk = desk;
        _field = field;
        CanFocus = true;
        Width = Dim.Fill();
        Height = 1;
        SetScheme(look.Scheme);
        _label = new TextRows(look) { Height = 1 };
        _beside = new TextRows(look) { Height = 1, Width = Dim.Fill() };
        Field = new TypeField(look, desk.TextOf(field)) { Width = FieldWidth };
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
    /// <param name="width">Columns of the sheet.</param>
    /// <param name="isShown">Whether it can be seen.</param>
    /// <param name="edge">A mark before it.</param>
    public void Place(int y, int width, bool isShown, char edge)
    {
        int longest = _desk.Fields.Max(name => name.Length);
        int label = Math.Clamp(longest + 3, LeastLabel, Math.Max(LeastLabel, (width * 45 / 100)));
        _edge = edge;
        _label.Width = label;
        Field.X = label;
        _beside.X = label + FieldWidth;

        // A row out of sight is not hidden but moved off: Tab must be able to reach its field.
        Y = isShown ? y : -2;
    }

    /// <summary>Shows what has changed.</summary>
    public void Renew()
    {
        if (Field.Said != _desk.TextOf(_field))
            Field.Put(_desk.TextOf(_field));
        _label.Show(($"{_edge}{_desk.Fields[_field]}", LineTone.Plain));
        AdviceLine beside = _desk.Beside(_field);
        _beside.Show((beside.Tone == LineTone.Warning ? $"! {beside.Text}" : beside.Text, beside.Tone));
    }
}
