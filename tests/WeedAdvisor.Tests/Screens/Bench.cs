using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;
using WeedAdvisor.Interview.Desks.Labels;
using WeedAdvisor.Interview.Desks.Lessons;
using WeedAdvisor.Interview.Files;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Screens;
using WeedAdvisor.Tests.Interview;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Screens;

/// <summary>The screens on a bench: no terminal, keys by hand, the picture as text.</summary>
internal sealed class Bench : IDisposable
{
    private readonly VirtualTimeProvider _time = new();
    private readonly IApplication _app;
    private readonly MainWindow _window;
    private readonly SessionToken? _token;

    public Bench(
        int width = 80,
        int height = 24,
        bool plain = false,
        Visit? recovered = null,
        Visit? visit = null,
        InterviewSession? session = null,
        LabelShelf? labels = null,
        Func<Bench, IReadOnlyList<RecoveryOffer>>? offers = null
    )
    {
        _app = Application.Create(_time);
        _app.Init("ansi");
        _app.Driver!.SetScreenSize(width, height);
        Width = width;
        Session = session
            ?? new InterviewSession(
                SmallTrade.Knowledge,
                new FakeAdvice(),
                visit ?? VisitEdits.Begin(new DateOnly(2026, 4, 14)),
                Keeper
            );
        const string told =
            "The interview of 2026-04-14 (Mist house, Container yard) was broken off before it was saved. It is in no "
            + "file yet.";
        IReadOnlyList<RecoveryOffer> offered = offers?.Invoke(this)
            ?? (recovered is null ? [] : [Offer(told, recovered)]);
        _window = new MainWindow(
            _app,
            Session,
            new ScreenSettings(Store, plain, offered, Labels: labels)
            {
                Beside = search => search(),
                Lessons = () => new LessonDesk(ShippedRules.Knowledge),
            }
        );
        _token = _app.Begin(_window);
        Draw();
    }

    public int Width { get; }

    public FakeStore Store { get; } = new();

    public FakeKeeper Keeper { get; } = new();

    public InterviewSession Session { get; }

    public int AsideTimes { get; private set; }

    public bool HasLeft => _window.StopRequested;

    /// <summary>The picture, without blanks at line ends.</summary>
    public string Picture =>
        string.Join('\n', _app.Driver!.ToString()!.ReplaceLineEndings("\n").Split('\n').Select(line => line.TrimEnd()))
            .TrimEnd('\n') + "\n";

    public string Ansi => _app.Driver!.ToAnsi();

    /// <summary>An interview that was broken off.</summary>
    public RecoveryOffer Offer(string told, Visit draft) =>
        new(
            told,
            () =>
            {
                Session.Resume(draft, null);
                return null;
            },
            () => $"It is put aside in /state/declined-{++AsideTimes}.yaml."
        );

    /// <summary>The keys that the terminal library itself would take for a command.</summary>
    public IEnumerable<Key> KeysOf(Command command) => _app.Keyboard.KeyBindings.GetAllFromCommands(command);

    public Bench Press(params Key[] keys)
    {
        foreach (Key key in keys)
        {
            _app.InjectKey(key);
            Draw();
        }

        return this;
    }

    public Bench Type(string text)
    {
        foreach (char letter in text)
            Press(new Key(letter));
        return this;
    }

    /// <summary>Lets what was put off happen, and draws.</summary>
    public Bench Settle()
    {
        _time.Advance(TimeSpan.FromMilliseconds(10));
        _app.TimedEvents!.RunTimers();
        Draw();
        return this;
    }

    public Bench Size(int width, int height)
    {
        _app.Driver!.SetScreenSize(width, height);
        Draw();
        return this;
    }

    public void Dispose()
    {
        if (_token is not null)
            _app.End(_token);
        _window.Dispose();
        _app.Dispose();
    }

    private void Draw() => _app.LayoutAndDraw(true);
}
