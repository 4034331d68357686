using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Screens;

/// <summary>Asks for words to look for on the page below it.</summary>
internal sealed class SearchSheet : Sheet
{
    private readonly TypeField _words;
    private readonly TextRows _note;
    private readonly Func<string, string?> _find;

    /// <param name="look">The look.</param>
    /// <param name="find">Finds the words; gives what went wrong, or null.</param>
    public SearchSheet(Look look, Func<string, string?> find)
        : base(look, "Look for words")
    {
        _find = find;
        _words = new TypeField(look)
        {
            X = 1,
            Y = 2,
            Width = Dim.Fill(1),
        };
        _words.Entered += Find;
        _note = new TextRows(look)
        {
            Y = 4,
            Width = Dim.Fill(),
            Height = 2,
        };
        _note.Show(("Enter goes to the next line that holds them; N on the page to the one after it.", LineTone.Quiet));
        Add(_words, _note);
    }

    public override IReadOnlyList<View> Stops => [_words];

    public override string Keys => "Enter find   Esc back";

    private void Find()
    {
        if (_find(_words.Said) is { } trouble)
            _note.Show((trouble, LineTone.Warning));
        else
            Close();
    }
}
