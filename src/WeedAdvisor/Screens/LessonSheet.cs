using System.Globalization;
using System.Text;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Desks.Lessons;

namespace WeedAdvisor.Screens;

/// <summary>
/// The lessons: choose one, then Enter shows the answer to each question and the next. A trainee may put the work into
/// an order of his own and have it held against the advice.
/// </summary>
internal sealed class LessonSheet : Sheet
{
    private const string AllOfThem = "Lessons";

    private readonly LessonDesk _desk;
    private readonly ListingView _list;
    private readonly DocumentView _page;
    private readonly ListingView _order;
    private readonly DocumentView _score;
    private ListingView _open;

    /// <param name="look">The look.</param>
    /// <param name="desk">The lessons.</param>
    /// <param name="search">Asks for words to look for on a page.</param>
    public LessonSheet(Look look, LessonDesk desk, Action<DocumentView> search)
        : base(look, AllOfThem)
    {
        _desk = desk;
        _list = Placed(
            new ListingView(look, width =>
                Row.Of(desk.Lessons.Select(lesson => ("- ", $"{lesson.Title} ({lesson.Id})")), width)
            )
        );
        _page = Placed(new DocumentView(look, () => desk.Page));
        _order = Placed(new ListingView(look, width => Row.Of(desk.Order.Choices.Select(Choice), width)));
        _score = Placed(new DocumentView(look, () => desk.Score));
        _page.Searched += search;
        _score.Searched += search;
        _order.Picked += Turn;
        _order.Ticked += Turn;
        Add(_list, _page, _order, _score);
        // Closed and opened again, the lesson lies where it was.
        _open = desk.Taken is null ? _list : _page;
        Show(_open);
    }

    public override IReadOnlyList<View> Stops => [_open];

    public override string Keys =>
        _open == _list ? "Up and Down   Enter begin   Esc close"
        : _open == _order ? "Enter gives the next place or takes it back   S how it agrees   Esc the lesson"
        : _open == _score ? "Up and Down   / find   Esc your order"
        : _desk.HasMore ? "Enter shows the answer   O your own order   / find   Esc the lessons"
        : "O your own order   Up and Down   / find   Esc the lessons";

    public override bool Hear(Key key)
    {
        if (_open == _list && key == Key.Enter && _desk.Lessons.Length > 0)
        {
            _desk.Take(_desk.Lessons[_list.At]);
            _order.Renew(toTop: true);
            Show(_page, fromTop: true);
        }
        else if (_open == _page && key == Key.Enter)
        {
            _desk.Next();
            Show(_page, fromTop: true);
        }
        else if (_open == _page && Letter(key) == 'o')
            Show(_order);
        else if (_open == _order && Letter(key) == 's' && !_desk.Order.Named.IsEmpty)
            Show(_score, fromTop: true);
        else
            return false;
        return true;
    }

    public override void Escape()
    {
        if (_open == _list)
            Close();
        else if (_open == _score)
            Show(_order);
        else if (_open == _order)
            Show(_page);
        else
        {
            _desk.PutBack();
            Show(_list);
        }
    }

    private static char Letter(Key key) => (char)Rune.ToLowerInvariant(key.AsRune).Value;

    private static T Placed<T>(T view)
        where T : ListingView
    {
        view.Y = 2;
        view.Width = Dim.Fill();
        view.Height = Dim.Fill();
        return view;
    }

    private (string Mark, string Text) Choice(string action, int at) =>
        (
            _desk.Order.PlaceOf(at) is { } place
                ? place.ToString(CultureInfo.InvariantCulture).PadLeft(2) + ". "
                : " -  ",
            _desk.NameOf(action)
        );

    private void Turn(int choice)
    {
        _desk.Turn(choice);
        _order.Renew();
    }

    private void Show(ListingView view, bool fromTop = false)
    {
        _open = view;
        Heading =
            _desk.Taken is not { } lesson ? AllOfThem
            : view == _order ? $"What would you do, in which order? {lesson.Title}"
            : $"Lesson: {lesson.Title}";
        foreach (ListingView one in (ListingView[])[_list, _page, _order, _score])
            one.Visible = one == view;
        view.Renew(fromTop);
        view.SetFocus();
    }
}
