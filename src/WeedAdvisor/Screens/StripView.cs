using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Desks.Season;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Reports.Season;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace WeedAdvisor.Screens;

/// <summary>
/// The year as a strip with a cursor over its weeks. Each grade has its character as well as its colour.
/// </summary>
internal sealed class StripView : View
{
    private const int PageOfWeeks = 4,
        HeadRows = 2,
        LeastName = 5;

    private readonly Look _look;
    private readonly SeasonDesk _desk;

    /// <param name="look">The look.</param>
    /// <param name="desk">The plan.</param>
    public StripView(Look look, SeasonDesk desk)
    {
        _look = look;
        _desk = desk;
        CanFocus = true;
        SetScheme(look.Scheme);
    }

    /// <summary>The cursor has moved.</summary>
    public event Action? Moved;

    /// <summary>Rows that the strip needs.</summary>
    public int Rows => _desk.Strip is { } strip ? strip.Rows.Length + HeadRows : 0;

    protected override bool OnDrawingContent(DrawContext? context)
    {
        for (int y = 0; y < Viewport.Height; y++)
            Put(0, y, new string(' ', Viewport.Width), _look.Normal);
        if (_desk.Strip is not { } strip)
            return true;

        // In a narrow window the names give way, never the weeks.
        int left = Math.Clamp(Viewport.Width - SeasonYear.Weeks - 1, LeastName, StripText.NameColumns);
        Cells(left, 0, "", StripText.Months(strip), _ => _look.Quiet);
        Cells(left, 1, "goes on", string.Concat(strip.Marks.Select((mark, week) => mark ?? Empty(strip, week))), week =>
            strip.Marks[week] is null ? _look.Quiet : _look.Heading
        );
        int room = Viewport.Height - HeadRows;
        int shown = strip.Rows.Length <= room ? strip.Rows.Length : Math.Max(0, room - 1);
        for (int i = 0; i < shown; i++)
        {
            StripRow row = strip.Rows[i];
            Cells(left, HeadRows + i, row.Name, string.Concat(row.Weeks.Select(StripText.Character)), week =>
                _look.Of(row.Weeks[week])
            );
        }

        if (shown < strip.Rows.Length && room > 0)
            Put(
                1,
                HeadRows + shown,
                $"and {strip.Rows.Length - shown} weeds more that cost less; a higher window shows them",
                _look.Quiet
            );
        return true;
    }

    protected override bool OnKeyDown(Key key)
    {
        int weeks =
            key == Key.CursorRight ? 1
            : key == Key.CursorLeft ? -1
            : key == Key.CursorRight.WithCtrl ? PageOfWeeks
            : key == Key.CursorLeft.WithCtrl ? -PageOfWeeks
            : key == Key.Home ? -SeasonYear.Weeks
            : key == Key.End ? SeasonYear.Weeks
            : 0;
        if (key == Key.CursorDown || key == Key.CursorUp)
            _desk.MoveToApplication(key == Key.CursorDown ? +1 : -1);
        else if (weeks != 0)
            _desk.Move(weeks);
        else
            return false;
        SetNeedsDraw();
        Moved?.Invoke();
        return true;
    }

    private char Empty(Strip strip, int week) =>
        _desk.IsClosed(week) ? 'x'
        : strip.Shut[week] ? '-'
        : ' ';

    private void Cells(int left, int y, string name, string cells, Func<int, Attribute> of)
    {
        if (y >= Viewport.Height)
            return;
        Put(1, y, name.Length >= left ? name[..(left - 1)] : name, _look.Normal);
        for (int week = 0; week < cells.Length; week++)
            Put(1 + left + week, y, cells[week].ToString(), HasFocus && week == _desk.Week ? _look.Cursor : of(week));
    }

    private void Put(int x, int y, string text, Attribute attribute)
    {
        if (x >= Viewport.Width)
            return;
        SetAttribute(attribute);
        Move(x, y);
        AddStr(text[..Math.Min(text.Length, Viewport.Width - x)]);
    }
}
