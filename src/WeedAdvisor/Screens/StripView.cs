using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Reports.Season;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace WeedAdvisor.Screens;

/// <summary>The year as a strip with a cursor over its weeks. Each grade has its character as well as its colour.</summary>
internal sealed class StripView : View
{
    private const int PageOfWeeks = 4;

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
    public int Rows => _desk.Strip is { } strip ? strip.Rows.Length + 2 : 0;

    protected override bool OnDrawingContent(DrawContext? context)
    {
        if (_desk.Strip is not { } strip)
            return true;
        string[] lines = [.. StripText.Lines(strip)];
        int names = lines.Length > 0 ? lines[0].Length - SeasonYear.Weeks : 0;
        for (int y = 0; y < Viewport.Height; y++)
        {
            string line = y < lines.Length ? lines[y] : "";
            for (int x = 0; x < Viewport.Width; x++)
            {
                char mark = x < line.Length ? line[x] : ' ';
                bool isCursor = HasFocus && x == names + _desk.Week && y < lines.Length;
                SetAttribute(isCursor ? _look.Cursor : Tone(mark, y, x >= names));
                Move(x, y);
                AddStr(mark.ToString());
            }
        }

        return true;
    }

    protected override bool OnKeyDown(Key key)
    {
        int weeks = key == Key.CursorRight ? 1
            : key == Key.CursorLeft ? -1
            : key == Key.CursorRight.WithCtrl ? PageOfWeeks
            : key == Key.CursorLeft.WithCtrl ? -PageOfWeeks
            : key == Key.Home ? -SeasonYear.Weeks
            : key == Key.End ? SeasonYear.Weeks
            : 0;
        if (weeks == 0)
            return false;
        _desk.Move(weeks);
        SetNeedsDraw();
        Moved?.Invoke();
        return true;
    }

    private Attribute Tone(char mark, int row, bool isWeek)
    {
        if (row < 2 || !isWeek)
            return row == 1 && isWeek && mark is >= 'A' and <= 'Z' ? _look.Heading : _look.Normal;
        return mark switch
        {
            '#' => _look.Heading,
            'o' => _look.Warning,
            '.' => _look.Quiet,
            _ => _look.Normal,
        };
    }
}
