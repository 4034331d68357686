using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace WeedAdvisor.Screens;

/// <content>The keys. They are heard before the view that has the focus, so that no field can swallow them.</content>
internal sealed partial class MainWindow
{
    private void HearKey(object? sender, Key key)
    {
        if (_told is not null)
        {
            _told = null;
            ShowBars();
        }

        if (key == Key.Q.WithCtrl || key == Key.C.WithCtrl)
            Leave();
        else if (_small.Visible)
            key.Handled = true;
        else if (key == Key.Z.WithCtrl)
            UndoHere(key);
        else if (key == Key.R.WithCtrl)
            Redo();
        else if (key == Key.Tab)
            Step(+1);
        else if (key == Key.Tab.WithShift)
            Step(-1);
        else if (_sheets.Count > 0 ? !HearOnSheet(key) : !HearOnInterview(key))
            return;
        // A sheet may have other keys now.
        if (_sheets.Count > 0)
            ShowBars();
        key.Handled = true;
    }

    private bool HearOnSheet(Key key)
    {
        Sheet sheet = _sheets.Peek();
        if (key == Key.Esc)
            sheet.Escape();
        else
            return sheet.Hear(key);
        return true;
    }

    private bool HearOnInterview(Key key)
    {
        if (key == Key.Esc && _advice.HasFocus)
            OtherPane();
        else if (key == Key.Esc)
            AskToLeave();
        else if (key == Key.F1)
            Show(new HelpSheet(_look));
        else if (key == Key.F2)
            Show(new AreasSheet(_look, _session, Show));
        else if (key == Key.F3)
            Show(new QuestionsSheet(_look, _session));
        else if (key == Key.F4)
            NotKnown();
        else if (key == Key.F5)
            Show(new VisitSheet(_look, _session));
        else if (key == Key.F6)
            OtherPane();
        else if (key == Key.F7)
            Back();
        else if (key == Key.F8)
            Next();
        else if (key == Key.F9)
            OpenRates();
        else if (key == Key.P.WithCtrl)
            OpenPlan();
        else if (key == Key.Y.WithCtrl)
            OpenSeason();
        else if (key == Key.E.WithCtrl)
            OpenCosts();
        else if (key == Key.L.WithCtrl)
            OpenLabels();
        else if (key == Key.W.WithCtrl)
            OpenWhatIf();
        else if (key == Key.T.WithCtrl)
            OpenLessons();
        else if (key == Key.S.WithCtrl)
            Save();
        else if (key == Key.O.WithCtrl)
            Open();
        else if (_advice.HasFocus && System.Text.Rune.ToLowerInvariant(key.AsRune).Value == 'w')
            Widen();
        else
            return false;
        return true;
    }

    /// <summary>The pane with the keys takes the whole width, or gives it back.</summary>
    private void Widen()
    {
        _isWide = !_isWide;
        Arrange();
        _advice.Renew();
    }

    /// <summary>
    /// A sheet that keeps wishes of its own takes them back; else the last edit of the visit is undone.
    /// </summary>
    private void UndoHere(Key key)
    {
        if (_sheets.Count == 0 || !_sheets.Peek().Hear(key))
            Undo();
    }

    /// <summary>Tab: through the stops of the page and the advice, or of the sheet.</summary>
    private void Step(int direction)
    {
        List<View> stops = [.. Top.Stops];
        if (_sheets.Count == 0 && !IsNarrow)
            stops.Add(_advice);
        if (IsNarrow && _onAdvice && _sheets.Count == 0)
            stops = [_advice];
        int at = stops.FindIndex(stop => stop.HasFocus);
        int next = at < 0 ? 0 : (at + direction + stops.Count) % stops.Count;
        stops[next].SetFocus();
        _onAdvice = _advice.HasFocus;
    }

    private void OtherPane()
    {
        _onAdvice = !_advice.HasFocus;
        Arrange();
        if (!_onAdvice)
        {
            _page.Enter();
            return;
        }

        _advice.SetFocus();
        if (_advice.At == 0)
            _advice.PointAtFirstAction();
    }
}
