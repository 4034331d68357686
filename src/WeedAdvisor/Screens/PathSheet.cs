using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Screens;

/// <summary>Asks for a file and does something with it.</summary>
internal sealed class PathSheet : Sheet
{
    private readonly TypeField _path;
    private readonly TextRows _note;
    private readonly PressView[] _presses;
    private readonly Func<string, string?> _use;

    /// <param name="look">The look.</param>
    /// <param name="title">The title.</param>
    /// <param name="path">The path to begin with.</param>
    /// <param name="verb">What is done with the file.</param>
    /// <param name="use">Does it; gives what went wrong, or null.</param>
    public PathSheet(Look look, string title, string path, string verb, Func<string, string?> use)
        : base(look, title)
    {
        _use = use;
        var label = new TextRows(look)
        {
            Y = 2,
            Width = Dim.Fill(),
            Height = 1,
        };
        label.Show(("File", LineTone.Quiet));
        _path = new TypeField(look, path)
        {
            X = 1,
            Y = 3,
            Width = Dim.Fill(1),
        };
        _path.Entered += Use;
        _note = new TextRows(look)
        {
            Y = 5,
            Width = Dim.Fill(),
            Height = Dim.Fill(2),
        };
        _presses = [new PressView(look, verb, Use), new PressView(look, "Close", Close)];
        Add(label, _path, _note);
        AddInRow(Pos.AnchorEnd(1), _presses);
    }

    public override IReadOnlyList<View> Stops => [_path, .. _presses];

    private void Use()
    {
        string path = _path.Said.Trim();
        string? trouble = path.Length == 0 ? "Type the name of a file." : _use(path);
        if (trouble is null)
            Close();
        else
            _note.Show((trouble, LineTone.Warning));
    }
}
