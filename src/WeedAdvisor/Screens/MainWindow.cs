using System.Collections.Immutable;
using System.Drawing;
using Terminal.Gui.App;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;
using WeedAdvisor.Interview.Desks.Costs;
using WeedAdvisor.Interview.Desks.Lessons;
using WeedAdvisor.Interview.Desks.Plan;
using WeedAdvisor.Interview.Desks.Rates;
using WeedAdvisor.Interview.Desks.Season;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Screens;

/// <summary>
/// The window: the question on the left, the advice on the right, a bar above and one below. Pages for one task lie
/// over it as sheets, so that there is never more than one loop.
/// </summary>
internal sealed partial class MainWindow : Window
{
    /// <summary>Below this the window says that it is too small.</summary>
    public const int LeastWidth = 60,
        LeastHeight = 20;

    /// <summary>From this width on, both panes stand side by side.</summary>
    private const int WidthForBoth = 76;

    private readonly IApplication _app;
    private readonly InterviewSession _session;
    private readonly ScreenSettings _settings;
    private LessonDesk? _lessons;
    private readonly Look _look;
    private readonly TextRows _head;
    private readonly TextRows _foot;
    private readonly TextRows _small;
    private readonly RuleView _rule;
    private readonly DocumentView _advice;
    private readonly RateDesks _rates;
    private readonly CostDesks _costs;
    private readonly SeasonDesks _seasons;
    private readonly PlanDesks _plans;
    private readonly Stack<Sheet> _sheets = new();
    private Pane _page;
    private string _pageKey = "";
    private bool _onAdvice;
    private bool _full;
    private bool _isWide;
    private string? _told;
    private string? _remark;
    private ImmutableArray<Question> _aside = [];

    /// <param name="app">The application that runs it.</param>
    /// <param name="session">The interview.</param>
    /// <param name="settings">What the screens are given.</param>
    public MainWindow(IApplication app, InterviewSession session, ScreenSettings settings)
    {
        _app = app;
        _session = session;
        _settings = settings;
        _rates = new RateDesks(session);
        _costs = new CostDesks(session);
        _seasons = new SeasonDesks(session);
        _plans = new PlanDesks(session);
        _look = settings.IsPlain ? Look.Plain : Look.Calm;
        SetScheme(_look.Scheme);
        BorderStyle = LineStyle.None;
        _head = new TextRows(_look)
        {
            Width = Dim.Fill(),
            Height = 1,
            IsBar = true,
        };
        _foot = new TextRows(_look)
        {
            Y = Pos.AnchorEnd(1),
            Width = Dim.Fill(),
            Height = 1,
            IsBar = true,
        };
        _small = new TextRows(_look)
        {
            Width = Dim.Fill(),
            Height = Dim.Fill(),
            Visible = false,
        };
        _rule = new RuleView(_look)
        {
            Y = 1,
            Width = 1,
            Height = Dim.Fill(1),
        };
        _advice = new DocumentView(_look, AdviceBlocks) { Y = 1, Height = Dim.Fill(1) };
        _advice.Opened += OpenReasons;
        _advice.Searched += Search;
        _advice.Ticked += _ =>
        {
            _full = !_full;
            _advice.Renew();
        };
        _advice.HasFocusChanged += (_, _) => ShowBars();
        _page = NewPage();
        Add(_head, _page, _rule, _advice, _foot, _small);
        _session.Changed += Render;

        // The library would put the program to sleep in the shell: Ctrl+Z is for undoing, whatever has the focus.
        foreach (Key suspend in Application.GetDefaultKeys(Command.Suspend))
            _app.Keyboard.KeyBindings.Remove(suspend);
        _app.Keyboard.KeyDown += HearKey;
        Render();
        _page.Enter();
        OfferRecovered(0, null);
        if (settings.Troubles is { Count: > 0 } troubles)
        {
            Show(
                new ChoiceSheet(
                    _look,
                    "An interview was broken off",
                    string.Join("\n", troubles),
                    [("Go on", () => { })]
                )
            );
        }
    }

    private Pane Top => _sheets.Count > 0 ? _sheets.Peek() : _page;

    /// <summary>Whether one pane takes the whole width: there is no room for both, or it was asked for.</summary>
    private bool IsNarrow => Frame.Width < WidthForBoth || _isWide;

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
            _session.Changed -= Render;
            _app.Keyboard.KeyDown -= HearKey;
        }

        base.Dispose(disposing);
    }

    private void Render()
    {
        string key = $"{_session.Area.Id}/{_session.Current?.Id}";
        if (key != _pageKey)
            TurnPage(key);
        else
            _page.Renew();
        TellSetAside();
        _advice.Renew(toTop: !_advice.HasFocus);
        ShowBars();
    }

    private void TellSetAside()
    {
        if (_session.SetAside is { IsEmpty: false } aside && aside != _aside)
            _told = "set aside: " + string.Join(", ", aside.Select(EditNames.Label));
        _aside = _session.SetAside;
        if (_session.Remark is { } remark && remark != _remark)
            _told = remark;
        _remark = _session.Remark;
    }

    private void TurnPage(string key)
    {
        bool first = _pageKey.Length == 0;
        _pageKey = key;
        if (!first)
        {
            bool focused = _page.HasFocus || _sheets.Count == 0;
            Pane old = _page;
            _page = NewPage();
            Add(_page);
            Remove(old);
            old.Dispose();
            Arrange();
            if (focused && _sheets.Count == 0)
            {
                _onAdvice = false;
                Arrange();
                _page.Enter();
            }
        }
    }

    private Pane NewPage()
    {
        Pane page = _session.Current is { } question
            ? new QuestionPage(
                _look,
                _session,
                question,
                new Ways(Back, Next, NotKnown, Clear, PickWeed, PickPast, Drop)
            )
            : new EndPage(
                _look,
                _session,
                [
                    .. _session.Progress.Skipped > 0
                        ? [("Go on with what was passed over", Next)]
                        : Array.Empty<(string, Action)>(),
                    .. _session.Progress.WorthAgain > 0
                        ? [("Go through what is not known once more", () => _session.AskAgain())]
                        : Array.Empty<(string, Action)>(),
                    ("Save the visit", Save),
                    ("Plan the year", OpenPlan),
                    ("What goes on in which week", OpenSeason),
                    ("What it costs", OpenCosts),
                    ("Another area", () => Show(new AreasSheet(_look, _session, Show))),
                    ("All questions of this area", () => Show(new QuestionsSheet(_look, _session))),
                    ("Leave", Leave),
                ]
            );
        page.Y = 1;
        page.Height = Dim.Fill(1);
        return page;
    }

    private IEnumerable<Block> AdviceBlocks() =>
        _session.InUnits(
            AdvicePage.Of(_session.Knowledge, _session.Advice, _session.Suggested, _full, _session.Current)
        );

    /// <summary>Gives every part its place for the size of the window.</summary>
    private void Arrange()
    {
        if (_small is null)
            return;
        bool tooSmall = Frame.Width < LeastWidth || Frame.Height < LeastHeight;
        bool sheet = _sheets.Count > 0;
        _small.Visible = tooSmall;
        _head.Visible = _foot.Visible = !tooSmall;
        _page.Visible = !tooSmall && !sheet && !(IsNarrow && _onAdvice);
        _advice.Visible = !tooSmall && !sheet && !(IsNarrow && !_onAdvice);
        _rule.Visible = !tooSmall && !sheet && !IsNarrow;
        foreach (Sheet laid in _sheets)
            laid.Visible = !tooSmall && ReferenceEquals(laid, _sheets.Peek());
        int left = IsNarrow ? Frame.Width : Math.Max(44, Frame.Width * 52 / 100);
        _page.Width = left;
        _rule.X = left;
        _advice.X = IsNarrow ? 0 : left + 1;
        _advice.Width = Dim.Fill();
        if (tooSmall)
            ShowTooSmall();
        else
            ShowBars();
    }

    private void ShowTooSmall() =>
        _small.Show(
            (
                $"This window is {Frame.Width} by {Frame.Height}. Make it larger, at least {LeastWidth} by "
                    + $"{LeastHeight}, "
                    + "or use: weedadvisor ask",
                LineTone.Heading
            ),
            ("Nothing is lost. Ctrl+Q leaves.", LineTone.Plain)
        );

    private void ShowBars()
    {
        string place =
            _session.Visit.Areas.Length > 1
                ? $"{_session.Area.Name} ({_session.AreaIndex + 1} of {_session.Visit.Areas.Length})"
                : _session.Area.Name;
        string saved = _told
            ?? (
                _session.DraftTrouble is { } trouble ? $"NOT KEPT: {trouble}"
                : _session.IsSaved ? ""
                : "not saved"
            );
        string whole = $"{place}   {_session.Progress}   {Answering.Date(_session.Visit.Date)}   {saved}";
        _head.Show((whole.Length < Frame.Width ? whole : $"{place}   {_session.Progress}   {saved}", LineTone.Plain));
        string keys =
            Frame.Width >= 120
                ? "F1 Help  F2 Areas  F3 Questions  F5 Visit  F6 Advice  F9 Rates  Ctrl+: Z Undo  P Plan  Y Year  "
                    + "E Costs  S Save  Q Leave"
            : Frame.Width >= 80 ? "F1 Help  F2 Areas  F6 Advice  F9 Rates  Ctrl+: Z Undo  P Plan  S Save  Q Leave"
            : "F1 Help  F2 Areas  F6 Advice  Ctrl+: Z Undo S Save Q Leave";
        if (_sheets.Count > 0)
            keys = _told ?? _sheets.Peek().Keys;
        else if (_advice.HasFocus)
        {
            keys =
                Frame.Width >= 80
                    ? "Up and Down   Enter reasons   Space more or less   / find   W width   Esc back"
                    : "Up and Down   Enter reasons   Space more or less   Esc back";
        }
        _foot.Show((keys, LineTone.Plain));
    }
}
