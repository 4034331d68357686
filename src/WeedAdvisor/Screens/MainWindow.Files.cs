using WeedAdvisor.Interview.Files;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Screens;

/// <content>Saving, opening and taking up again what was broken off.</content>
internal sealed partial class MainWindow
{
    private void Save() => AskWhereToSave(leave: false);

    private void AskWhereToSave(bool leave)
    {
        if (_session.FilePath is { } known && !leave)
        {
            SaveOutcome outcome = SaveTo(known, over: false);
            if (outcome.Trouble is null)
                AfterSaving(outcome, known, leave);
            if (outcome.IsChanged)
                AskOver(known, outcome.Trouble!);
            if (_session.IsSaved || outcome.IsChanged)
                return;
        }

        AskForFile(leave);
    }

    private void AskForFile(bool leave)
    {
        string? warned = null;
        Show(new PathSheet(_look, "Save the visit", _session.SuggestedPath, "Save", path =>
        {
            bool isAgreed = path == warned;
            if (path != _session.FilePath && !isAgreed && _settings.Store.Exists(path))
            {
                warned = path;
                return $"{path} exists already. Enter again replaces it; a copy of what is there now is kept.";
            }

            SaveOutcome outcome = SaveTo(path, over: isAgreed);
            if (outcome.IsChanged)
            {
                warned = path;
                return $"{outcome.Trouble} Enter again writes over it; a copy of what is there now is kept.";
            }

            if (outcome.Trouble is null)
                _app.Invoke(() => AfterSaving(outcome, path, leave));
            return outcome.Trouble;
        }));
    }

    private void AskOver(string path, string changed) => Show(new ChoiceSheet(
        _look, "The file was changed", changed,
        [
            ("Save under another name", () => AskForFile(leave: false)),
            ("Write over it; a copy of what is there now is kept", () => AfterSaving(SaveTo(path, over: true), path, leave: false)),
            ("Do not save now", () => { }),
        ]));

    private SaveOutcome SaveTo(string path, bool over)
    {
        _page.Commit();
        SaveOutcome outcome = _session.SaveTo(_settings.Store, path, over);
        _told = outcome.Trouble is null ? $"saved to {path}" : $"NOT SAVED: {outcome.Trouble}";
        ShowBars();
        return outcome;
    }

    /// <summary>Tells what has to be told of a save that went well, and leaves when that was wanted.</summary>
    private void AfterSaving(SaveOutcome outcome, string path, bool leave)
    {
        Action go = leave ? () => _app.RequestStop(this) : () => { };
        if (outcome.Trouble is null && !outcome.Notes.IsEmpty)
            Show(new ChoiceSheet(_look, "Saved", outcome.Told(path), [(leave ? "Leave" : "Go on", go)], go));
        else
            go();
    }

    private void Open()
    {
        if (_session.IsSaved)
            AskWhatToOpen();
        else
            Show(new ChoiceSheet(
                _look, "Open a visit", "The visit on screen is not saved.",
                [
                    ("Save it first", Save),
                    ("Open another; this one is offered at the next start", AskWhatToOpen),
                    ("Go on with this one", () => { }),
                ]));
    }

    private void AskWhatToOpen() => Show(new PathSheet(_look, "Open a visit", "", "Open", path =>
    {
        (Visit? visit, IReadOnlyList<string> problems) = _settings.Store.Load(path);
        if (visit is null)
            return string.Join("\n", problems.Take(8));
        if (_settings.Labels?.Turn(path) is { } wrong)
            return wrong;
        _session.Open(visit, path);
        return null;
    }));

    /// <summary>Offers what was broken off, one after another, until one is taken or put off.</summary>
    private void OfferRecovered(int at, string? before)
    {
        if (_settings.Offers is not { } offers || at >= offers.Count)
        {
            if (before is not null)
                Show(new ChoiceSheet(_look, "Put aside", before, [("Begin", () => { })]));
            return;
        }

        RecoveryOffer offer = offers[at];
        Show(new ChoiceSheet(
            _look, "An interview was broken off", before is null ? offer.Told : $"{before}\n\n{offer.Told}",
            [
                ("Go on with it", () => _told = offer.GoOn()),
                ("Do not go on with it; it is put aside", () => OfferRecovered(at + 1, offer.Decline())),
                ("Ask again at the next start", () => { }),
            ]));
    }
}
