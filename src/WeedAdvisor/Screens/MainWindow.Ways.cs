using System.Collections.Immutable;
using Terminal.Gui.Input;
using WeedAdvisor.Interview.Desks.Costs;
using WeedAdvisor.Interview.Desks.Labels;
using WeedAdvisor.Interview.Desks.Rates;
using WeedAdvisor.Interview.Desks.Season;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Pickers;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Screens;

/// <content>What the keys and presses lead to.</content>
internal sealed partial class MainWindow
{
    private void Next()
    {
        if (_page.Commit())
            _session.Next();
    }

    private void Back()
    {
        _page.Commit();
        _session.Back();
    }

    private void NotKnown()
    {
        if (_session.Current is not { } question)
            return;
        DropSeveral(question, () =>
        {
            _session.SayNotKnown(question);
            _session.Next();
        });
    }

    private void Clear()
    {
        if (_session.Current is { } question)
            DropSeveral(question, () => _session.Clear(question));
    }

    /// <summary>Asks first when the question's list has two entries or more.</summary>
    private void DropSeveral(Question question, Action drop)
    {
        if (Losses.Entries(_session.Knowledge, question, _session.Area).Length > 1)
            Drop(drop);
        else
            drop();
    }

    private void Drop(Action drop)
    {
        ImmutableArray<string> gone = Losses.Entries(_session.Knowledge, _session.Current!, _session.Area);
        Show(
            new ChoiceSheet(
                _look,
                "Take out what was named?",
                $"This takes out: {Losses.Named(gone)}.",
                [("Keep it", () => { }), ("Take it out", drop)]
            )
        );
    }

    private void Undo()
    {
        if (MayUndo() && !_page.TakeBack())
            _told = _session.Undo() is { } undone ? $"undone: {undone}" : "nothing to undo";
        AfterUndo();
    }

    private void Redo()
    {
        if (MayUndo())
            _told = _session.Redo() is { } redone ? $"done again: {redone}" : "nothing to do again";
        AfterUndo();
    }

    private bool MayUndo()
    {
        if (_sheets.Count == 0 || _sheets.Peek().TakesUndo)
            return true;
        _told = "Esc closes this page first; then Ctrl+Z undoes.";
        return false;
    }

    private void AfterUndo()
    {
        if (_sheets.Count > 0 && _sheets.Peek().TakesUndo)
            _sheets.Peek().Renew();
        ShowBars();
    }

    private void PickWeed(WeedSeen? seen) =>
        Show(new WeedSheet(_look, new WeedPicker(_session, seen), isNew: seen is null, Show));

    private void PickPast(int? index) =>
        Show(new PastSheet(_look, new PastPicker(_session, index), isNew: index is null, Show));

    private void OpenRates() => Show(new RatesSheet(_look, _rates, form => OpenRate(_rates.At(form))));

    private void OpenRate(RateDesk desk) =>
        Show(
            new FormSheet(
                _look,
                desk,
                new FormWay("Example", () => Done(desk.FillIn)),
                new FormWay("Clear", () => Done(desk.Clear))
            )
        );

    private static AdviceLine? Done(Action deed)
    {
        deed();
        return null;
    }

    private void OpenLabels()
    {
        if (_settings.Labels is { } shelf)
            Show(new LabelsSheet(_look, shelf, OpenLabel));
    }

    private void OpenLabel(string treatment)
    {
        if (_settings.Labels is not { } shelf)
            return;
        LabelDesk desk = shelf.At(treatment);
        Show(
            new FormSheet(_look, desk, new FormWay("Keep", () => Keep(desk, shelf), Key.S.WithCtrl, "Ctrl+S keep   "))
        );
    }

    private static AdviceLine Keep(LabelDesk desk, LabelShelf shelf) =>
        desk.Keep() is { } trouble
            ? new AdviceLine(trouble, LineTone.Warning)
            : new AdviceLine($"Written to {shelf.FilePath}. The advice goes by it from now on.", LineTone.Quiet);

    private void OpenSeason()
    {
        _page.Commit();
        SeasonDesk desk = _seasons.Here();
        Show(
            new SeasonSheet(
                _look,
                desk,
                Later,
                () => Show(new ReadingSheet(_look, $"The year: {desk.AreaName}", desk.Details, Search)),
                () => Show(new HelpSheet(_look, HelpSheet.Season))
            )
        );
    }

    private void OpenCosts()
    {
        _page.Commit();
        CostDesk desk = _costs.Here();
        string area = _session.Area.Name;
        Show(
            new CostSheet(
                _look,
                area,
                desk,
                way => Show(new ReadingSheet(_look, $"Against today's way: {area}", () => desk.Against(way), Search)),
                Search
            )
        );
    }

    /// <summary>Does something once what stands on the screen now is drawn.</summary>
    private void Later(Action deed) => _app.AddTimeout(TimeSpan.FromMilliseconds(1), () =>
        {
            deed();
            ShowBars();
            return false;
        });

    private void OpenLessons()
    {
        if (_settings.Lessons is not { } lessons)
            return;
        _page.Commit();
        Show(new LessonSheet(_look, _lessons ??= lessons(), Search));
    }

    /// <summary>What would be otherwise with the answer under the cursor; the visit stays as it is.</summary>
    private void OpenWhatIf()
    {
        if (_page is QuestionPage { Pointed: { } pointed })
            Show(
                new ReadingSheet(
                    _look,
                    "What if",
                    () => _session.InUnits(WhatIfPage.Of(_session, pointed.Question, pointed.Answer)),
                    Search
                )
            );
    }

    private void OpenReasons(string action) => Show(new DetailSheet(_look, _session, action, OpenLabel, Search));

    private void Search(DocumentView page) => Show(new SearchSheet(_look, page.Find));

    /// <summary>Leaves at once when everything is saved, else asks first.</summary>
    private void Leave()
    {
        _page.Commit();
        if (_session.IsSaved)
            _app.RequestStop(this);
        else
            AskToLeave();
    }

    private void AskToLeave()
    {
        if (_sheets.Count > 0 && _sheets.Peek() is ChoiceSheet)
            return;
        _page.Commit();
        if (_session.IsSaved)
        {
            Show(
                new ChoiceSheet(
                    _look,
                    "Leave",
                    "Everything is saved.",
                    [("Leave", () => _app.RequestStop(this)), ("Go on", () => { })]
                )
            );
            return;
        }

        string kept =
            _session.DraftPlace is { } place && _session.DraftTrouble is null
                ? $"Without saving, the answers are kept in {place} and offered at the next start."
                : "Without saving, the answers are LOST: they cannot be kept.";
        Show(
            new ChoiceSheet(
                _look,
                "Leave",
                "This visit is not saved. " + kept,
                [
                    ("Save and leave", () => AskWhereToSave(leave: true)),
                    ("Leave without saving", () => _app.RequestStop(this)),
                    ("Go on", () => { }),
                ]
            )
        );
    }

    private void Show(Sheet sheet)
    {
        _page.Commit();
        sheet.Closed += () => Hide(sheet);
        _sheets.Push(sheet);
        Add(sheet);
        Arrange();
        sheet.Enter();
    }

    private void Hide(Sheet sheet)
    {
        if (_sheets.Count == 0 || !ReferenceEquals(_sheets.Peek(), sheet))
            return;
        _sheets.Pop();
        Arrange();
        Remove(sheet);
        _app.Invoke(sheet.Dispose);
        Render();
        if (_sheets.Count > 0)
            Top.Enter();
        else if (_onAdvice)
            _advice.SetFocus();
        else
            _page.Enter();
    }
}
