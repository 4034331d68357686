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
        ("F5", "the visit: day, title, nursery, units"),
        ("F6", "to the advice and back; Enter there opens the reasons of an action"),
        ("F7", "the question before"),
        ("F8", "the next question"),
        ("F9", "rates: sprayers, spreaders, product; where a weed is named: find it by features"),
        ("Ctrl+P", "the plan of the year: rounds, cover, what goes on, hours and money, all chosen together"),
        ("Ctrl+Y", "the year: what goes on in which week of this area"),
        ("Ctrl+E", "what it costs: weeding rounds, mulches, granules, sprays, by your numbers"),
        ("Ctrl+L", "your labels: copy what your own bag or bottle says; on the reasons of a treatment, its label"),
        ("Ctrl+W", "on a question: what if the answer under the cursor were so; on reasons: what would change it"),
        ("Ctrl+T", "lessons: a worked visit rule by rule, for a class"),
        ("Ctrl+Z", "undo the last change of the visit, and go to where it was made; again: the one before"),
        ("Ctrl+R", "do again what was undone"),
        ("Ctrl+S", "save"),
        ("Ctrl+O", "open a visit"),
        ("/, N", "on a page to read: look for words; the same words further on"),
        ("W", "on the advice: over the whole width, and back"),
        ("Ctrl+Q", "leave; answers that are not saved are kept for the next start"),
        ("Esc", "close a page like this one, back from the advice; a question asks before it leaves"),
    ];

    private readonly ListingView _list;

    /// <summary>The keys of the season plan.</summary>
    public static readonly (string Key, string Does)[] Season =
    [
        ("Left, Right", "the week before, the week after; with Ctrl four of them; Home and End too"),
        ("Up, Down", "the application before, the application after"),
        ("Space", "close the week: nothing may go on in it; again: open it"),
        ("M", "close or open the month"),
        ("D", "drop the product that goes on in the week; elsewhere: take back the last one dropped"),
        ("K", "keep the product that goes on in the week: it must go on some time; again: let it go"),
        ("R", "rotation: how often running a site of action may go on: once, twice, any number"),
        ("- and +", "one application fewer than planned; one more allowed"),
        ("U, Ctrl+Z", "take the last change back"),
        ("0", "no wishes: the first plan"),
        ("Page Down", "read on below the strip; Page Up back"),
        ("Enter", "all work by day, what gets through, when nothing may go on"),
        ("Esc", "back to the interview; the wishes stay"),
        ("", ""),
        (
            "",
            "A, B, C stand in the week in which an application goes on. # held: four fifths or more of what comes up "
                + "is "
                + "stopped. + partly: half or more. o: it comes up and less than half is stopped. A dot: it does not "
                + "come up. "
                + "- nothing may go on. x closed by your wish."
        ),
    ];

    /// <summary>The keys of the plan of the year.</summary>
    public static readonly (string Key, string Does)[] Plan =
    [
        ("Up, Down", "the row before, the row after"),
        ("Left, Right", "change what stands in the row: rounds, cover, product, hours, money, pots"),
        ("0 to 9, Enter", "on hours, money and pots: type the number"),
        ("Delete", "take the wish of this row back: the search chooses there again"),
        ("Space", "on a product: close its week, so that nothing goes on in it"),
        ("D", "on a product: drop it; on one that was dropped: let it go on again"),
        ("K", "on a product: keep it, it must go on some time; again: let it go"),
        ("U, Ctrl+Z", "take the last change back"),
        ("A", "take all wishes back"),
        ("R", "does it stand? Every figure behind the plan is moved within its range"),
        ("Enter", "the whole plan to read: this week, month by month, costs, what is left out"),
        ("Esc", "back to the interview; the wishes stay"),
        ("", ""),
        (
            "",
            "A star stands before what you have wished. What you ask for is priced at once; then the year is planned "
                + "anew with your wish, and what is found takes its place. That takes some seconds; the keys do not "
                + "wait for it."
        ),
    ];

    /// <summary>The keys of the interview.</summary>
    public HelpSheet(Look look)
        : this(look, s_keys) { }

    /// <param name="look">The look.</param>
    /// <param name="keys">The keys and what they do.</param>
    public HelpSheet(Look look, IReadOnlyList<(string Key, string Does)> keys)
        : base(look, "Keys")
    {
        int column = Math.Max(10, keys.Max(key => key.Key.Length) + 2);
        _list = new ListingView(look, width =>
            Row.Of(
                [
                    .. keys.Select(key => (key.Key.PadRight(key.Key.Length == 0 ? 0 : column), key.Does)),
                    ("", ""),
                    (
                        "",
                        "Every answer is kept at once, so that a closed terminal or a power cut loses none. An answer "
                            + "that is "
                            + "missing never makes a chemical look allowed."
                    ),
                ],
                width
            )
        )
        {
            Y = 2,
            Width = Dim.Fill(),
            Height = Dim.Fill(),
        };
        Add(_list);
    }

    public override IReadOnlyList<View> Stops => [_list];
}
