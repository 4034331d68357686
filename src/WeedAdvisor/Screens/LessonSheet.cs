using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Desks.Lessons;

namespace WeedAdvisor.Screens;

/// <summary>The lessons: choose one, then Enter shows the answer to each question and the next.</summary>
internal sealed class LessonSheet : Sheet
{
    private const string AllOfThem = "Lessons";

    private readonly LessonDesk _desk;
    private readonly ListingView _list;
    private readonly DocumentView _page;

    /// <param name="look">The look.</param>
    /// <param name="desk">The lessons.</param>
    /// <param name="search">Asks for words to look for on a page.</param>
    public LessonSheet(Look look, LessonDesk desk, Action<DocumentView> search)
        : base(look, AllOfThem)
    {
        _desk = desk;
        _list = new ListingView(look, width =>
            Row.Of(desk.Lessons.Select(lesson => ("- ", $"{lesson.Title} ({lesson.Id})")), width)
        )
        {
            Y = 2,
            Width = Dim.Fill(),
            Height = Dim.Fill(),
        };
        _page = new DocumentView(look, () => desk.Page)
        {
            Y = 2,
            Width = Dim.Fill(),
            Height = Dim.Fill(),
            Visible = false,
        };
        _page.Searched += search;
        Add(_list, _page);
    }

    public override IReadOnlyList<View> Stops => _desk.Taken is null ? [_list] : [_page];

    public override string Keys =>
        _desk.Taken is null ? "Up and Down   Enter begin   Esc close"
        : _desk.HasMore ? "Enter shows the answer   Up and Down   / find   Esc the lessons"
        : "Up and Down   / find   Esc the lessons";

    public override bool Hear(Key key)
    {
        if (key != Key.Enter)
            return false;
        if (_desk.Taken is not null)
            _desk.Next();
        else if (_desk.Lessons.Length > 0)
            _desk.Take(_desk.Lessons[_list.At]);
        Show();
        return true;
    }

    public override void Escape()
    {
        if (_desk.Taken is null)
        {
            Close();
            return;
        }

        _desk.PutBack();
        Show();
    }

    private void Show()
    {
        Heading = _desk.Taken is { } lesson ? $"Lesson: {lesson.Title}" : AllOfThem;
        _list.Visible = _desk.Taken is null;
        _page.Visible = _desk.Taken is not null;
        _page.PointAt(0);
        _page.Renew();
        Stops[0].SetFocus();
    }
}
