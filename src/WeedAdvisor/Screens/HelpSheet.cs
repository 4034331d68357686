using Terminal.Gui.ViewBase;

namespace WeedAdvisor.Screens;

/// <summary>The keys and what they do.</summary>
internal sealed class HelpSheet : Sheet
{
    private static readonly (string Key, string Does)[] s_keys =
    [
        ("Tab", "next field; Shift+Tab the one before"),
        ("Up, Down", "move in a list; Page Up, Page Down, Home and End too"),
        ("Enter", "choose; on a question with one answer it also goes on"),
        ("Space", "tick or untick, and stay; on the advice: show more, or less"),
        ("Delete", "take a weed or an application out of its list"),
        ("F1", "this help"),
        ("F2", "areas of the visit: go to one, add, rename, remove"),
        ("F3", "all questions of the area with what was said"),
        ("F4", "don't know"),
        ("F5", "the visit: day, title, nursery"),
        ("F6", "to the advice and back; Enter there opens the reasons of an action"),
        ("F7", "the question before"),
        ("F8", "the next question"),
        ("F9", "rates: sprayers, spreaders, product; where a weed is named: find it by features"),
        ("Ctrl+Y", "the year: what goes on in which week of this area"),
        ("Ctrl+E", "what it costs: weeding rounds, mulches, granules, sprays, by your numbers"),
        ("Ctrl+S", "save"),
        ("Ctrl+O", "open a visit"),
        ("Ctrl+Q", "leave; answers that are not saved are kept for the next start"),
        ("Esc", "close a page like this one; the interview asks before it leaves"),
    ];

    private readonly ListingView _list;

    public HelpSheet(Look look)
        : base(look, "Keys")
    {
        _list = new ListingView(look, width => Row.Of(
            [
                .. s_keys.Select(key => (key.Key.PadRight(10), key.Does)),
                ("", ""),
                ("", "Every answer is kept at once, so that a closed terminal or a power cut loses none. An answer that is "
                    + "missing never makes a chemical look allowed."),
            ],
            width))
        {
            Y = 2,
            Width = Dim.Fill(),
            Height = Dim.Fill(),
        };
        Add(_list);
    }

    public override IReadOnlyList<View> Stops => [_list];
}
