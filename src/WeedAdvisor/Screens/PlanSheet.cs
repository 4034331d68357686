using System.Drawing;
using System.Text;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Desks.Plan;

namespace WeedAdvisor.Screens;

/// <summary>
/// The plan of the area's year, row by row under a cursor: what it costs, whether that is what was asked or what the
/// search found, the rows. What is asked is priced at once, and searched beside the screen.
/// </summary>
internal sealed class PlanSheet : Sheet
{
    private const int MoneyAt = 1,
        MostMoneyRows = 3,
        MostStatusRows = 3,
        MostAboutRows = 4,
        LeastRows = 3,
        WidthForAll = 80,
        WidthForWords = 118;

    private readonly PlanDesk _desk;
    private readonly PlanWays _ways;
    private readonly TextRows _money,
        _status,
        _about;
    private readonly ListingView _rows;
    private PlanJob? _running;
    private CancellationTokenSource _stop = new();

    /// <param name="look">The look.</param>
    /// <param name="desk">The plan.</param>
    /// <param name="ways">Where keys lead, and how a search is run beside the screen.</param>
    public PlanSheet(Look look, PlanDesk desk, PlanWays ways)
        : base(look, desk.Title)
    {
        _desk = desk;
        _ways = ways;
        _money = new TextRows(look) { Y = MoneyAt, Width = Dim.Fill() };
        _status = new TextRows(look) { Width = Dim.Fill() };
        _about = new TextRows(look) { Width = Dim.Fill() };
        _rows = new ListingView(look, width => Row.Of(desk.Lines(width))) { Width = Dim.Fill(), KeepsCursor = true };
        _rows.Moved += () =>
        {
            desk.PointAt(_rows.At);
            Renew();
            Seek();
        };
        Add(_money, _status, _rows, _about);
        Renew();
    }

    public override IReadOnlyList<View> Stops => [_rows];

    public override string Keys =>
        _desk.Shown is null ? "F1 Keys   Esc back"
        : Columns >= WidthForWords
            ? "F1 Keys  ↑↓ row  ←→ change  Delete wish back  Space close week  D drop  K keep  U undo  "
                + "R stands?  Enter plan  Esc"
        : Columns < WidthForAll ? "F1 Keys  ←→ change  U undo  R stands?  Enter plan  Esc"
        : "F1 Keys  ←→ change  Del  Space  D  K  U undo  R stands?  Enter plan  Esc";

    // The bar is written before a new size has come down to the sheet.
    private int Columns => SuperView?.Frame.Width ?? Frame.Width;

    public override bool Hear(Key key)
    {
        if (key == Key.F1)
            _ways.Help();
        else if (_desk.Shown is null)
            return false;
        else if (key == Key.Enter && !_desk.EndTyping())
            _ways.Details();
        else if (key == Key.Enter || Change(key))
            Changed();
        else if ((char)Rune.ToLowerInvariant(key.AsRune).Value == 'r')
            _ways.Robust();
        else
            return false;
        return true;
    }

    /// <summary>What is still searched is of no use to anybody once the page is left.</summary>
    public override void Escape()
    {
        _desk.EndTyping();
        _stop.Cancel();
        base.Escape();
    }

    public override void Renew()
    {
        _money.Show((_desk.Money.Text, _desk.Money.Tone));
        _status.Show((_desk.Status.Text, _desk.Status.Tone));
        _about.Show((_desk.About.Text, _desk.About.Tone), (_desk.Caution.Text, _desk.Caution.Tone));
        _rows.Renew();
        _rows.PointAt(_desk.At);
        Arrange();
    }

    /// <inheritdoc/>
    protected override void OnFrameChanged(in Rectangle frame)
    {
        base.OnFrameChanged(frame);
        Arrange();
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _stop.Cancel();
            _stop.Dispose();
        }

        base.Dispose(disposing);
    }

    private bool Change(Key key)
    {
        if (key == Key.CursorRight)
            _desk.Move(+1);
        else if (key == Key.CursorLeft)
            _desk.Move(-1);
        else if (key == Key.Delete || key == Key.DeleteChar)
            _desk.Free();
        else if (key == Key.Backspace)
            return _desk.Rub();
        else if (key == Key.Space)
            _desk.CloseWeek();
        else if (key == Key.Z.WithCtrl)
            _desk.Undo();
        else
            return ChangeBy((char)Rune.ToLowerInvariant(key.AsRune).Value);
        return true;
    }

    private bool ChangeBy(char letter)
    {
        if (_desk.Type(letter))
            return true;
        switch (letter)
        {
            case 'd':
                _desk.Drop();
                break;
            case 'k':
                _desk.Keep();
                break;
            case 'u':
                _desk.Undo();
                break;
            case 'a':
                _desk.Reset();
                break;
            default:
                return false;
        }

        return true;
    }

    private void Changed()
    {
        Renew();
        Seek();
    }

    /// <summary>
    /// Begins the search that is still to be made. One at a time: a new wish stops the one that runs, and the next
    /// begins when that has ended.
    /// </summary>
    public void Seek()
    {
        if (_running is not null)
        {
            if (!ReferenceEquals(_running, _desk.Job))
                _stop.Cancel();
            return;
        }

        if (_desk.Job is not { } job)
            return;
        _running = job;
        _stop = new CancellationTokenSource();
        CancellationToken stop = _stop.Token;
        _ways.Beside(
            () => job.Run(stop),
            answer =>
            {
                _running = null;
                if (!stop.IsCancellationRequested)
                    _desk.Take(job, answer);
                if (SuperView is null)
                    return;
                Renew();
                Seek();
            }
        );
    }

    private void Arrange()
    {
        if (_rows is null)
            return;
        int width = Math.Max(8, Frame.Width);
        int money = Math.Clamp(_money.RowsAt(width), 1, MostMoneyRows),
            status = Math.Clamp(_status.RowsAt(width), 1, MostStatusRows),
            about = Math.Clamp(_about.RowsAt(width), 1, MostAboutRows),
            top = MoneyAt + money + status + 1;
        _money.Height = money;
        _status.Y = MoneyAt + money;
        _status.Height = status;
        _rows.Y = top;
        _rows.Height = Math.Max(LeastRows, Frame.Height - top - about);
        _about.Y = top + Math.Max(LeastRows, Frame.Height - top - about);
        _about.Height = about;
    }
}

/// <summary>Where the keys of the plan lead, and how a search is run beside the screen.</summary>
/// <param name="Beside">
/// Runs a search where it does not hold up the keys, then gives what it came to on the thread of the screen.
/// </param>
/// <param name="Details">Opens the whole plan.</param>
/// <param name="Robust">Opens whether it stands.</param>
/// <param name="Help">Opens the help on the keys.</param>
internal sealed record PlanWays(
    Action<Func<PlanAnswer>, Action<PlanAnswer>> Beside,
    Action Details,
    Action Robust,
    Action Help
);
