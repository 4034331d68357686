using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Screens;

/// <summary>The visit as a whole: its day, its title, whose nursery, the units of its pages.</summary>
internal sealed class VisitSheet : Sheet
{
    private readonly InterviewSession _session;
    private readonly TypeField _day;
    private readonly TypeField _title;
    private readonly TypeField _nursery;
    private readonly TypeField _units;
    private readonly TextRows _note;
    private readonly PressView[] _presses;

    public VisitSheet(Look look, InterviewSession session)
        : base(look, "This visit")
    {
        _session = session;
        _day = Field("Day of the visit", Answering.Date(session.Visit.Date), 2, 12);
        _title = Field("Title", session.Visit.Title ?? "", 5, 50);
        _nursery = Field("Nursery", session.Visit.Nursery ?? "", 8, 50);
        _units = Field("Units: metric, us or both; empty for those of the sources", WordOf(session.Visit.Units), 11, 8);
        _day.Entered += () => _title.SetFocus();
        _title.Entered += () => _nursery.SetFocus();
        _nursery.Entered += () => _units.SetFocus();
        _units.Entered += Keep;
        _note = new TextRows(look)
        {
            Y = 14,
            Width = Dim.Fill(),
            Height = 2,
        };
        _presses = [new PressView(look, "Keep", Keep), new PressView(look, "Close", Close)];
        Add(_note);
        AddInRow(Pos.AnchorEnd(1), _presses);
    }

    public override IReadOnlyList<View> Stops => [_day, _title, _nursery, _units, .. _presses];

    private TypeField Field(string label, string text, int y, int width)
    {
        var name = new TextRows(Look)
        {
            Y = y,
            Width = Dim.Fill(),
            Height = 1,
        };
        name.Show((label, LineTone.Quiet));
        var field = new TypeField(Look, text)
        {
            X = 1,
            Y = y + 1,
            Width = width,
        };
        Add(name, field);
        return field;
    }

    private void Keep()
    {
        if (TypedAnswer.ReadDay(_day.Said, _session.Visit.Date) is not { } day)
        {
            _note.Show(("The day is not a date. Write it as 2026-04-30.", LineTone.Warning));
            return;
        }

        string units = _units.Said.Trim().ToLowerInvariant();
        if (units.Length > 0 && UnitsWords.Find(units) is null)
        {
            _note.Show(($"Units are metric, us or both, not '{_units.Said.Trim()}'.", LineTone.Warning));
            return;
        }

        if (_session.Describe(day, _title.Said, _nursery.Said, UnitsWords.Find(units)) is { } trouble)
            _note.Show((trouble, LineTone.Warning));
        else
            Close();
    }

    private static string WordOf(UnitsWanted? units) => units is { } wanted ? UnitsWords.Of(wanted) : "";
}
