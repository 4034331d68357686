using WeedAdvisor.Interview.Files;
using WeedAdvisor.Knowledge.Problems;
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
            Outcome<Saved, NotSaved> outcome = SaveTo(known, over: false);
            if (outcome.IsGood)
                AfterSaving(outcome, known, leave);
            bool isChanged = outcome is { IsGood: false, Refusals: [{ IsChanged: true }, ..] };
            if (isChanged)
                AskOver(known, outcome.Refusals[0].Why);
            if (_session.IsSaved || isChanged)
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

                Outcome<Saved, NotSaved> outcome = SaveTo(path, over: isAgreed);
                if (outcome.IsGood)
                {
                    _app.Invoke(() => AfterSaving(outcome, path, leave));
                    return null;
                }

                NotSaved refused = outcome.Refusals[0];
                if (!refused.IsChanged)
                    return refused.Why;
                warned = path;
                return $"{refused.Why} Enter again writes over it; a copy of what is there now is kept.";
            }));
    }

    private void AskOver(string path, string changed) =>
        Show(
            new ChoiceSheet(
                _look,
                "The file was changed",
                changed,
                [
                    ("Save under another name", () => AskForFile(leave: false)),
                    ("Write over it; a copy of what is there now is kept", () =>
                        AfterSaving(SaveTo(path, over: true), path, leave: false)
                    ),
                    ("Do not save now", () => { }),
                ]
            )
        );

    private Outcome<Saved, NotSaved> SaveTo(string path, bool over)
    {
        _page.Commit();
        Outcome<Saved, NotSaved> outcome = _session.SaveTo(_settings.Store, path, over);
        _told = outcome.IsGood ? $"saved to {path}" : $"NOT SAVED: {outcome.Refusals[0].Why}";
        ShowBars();
        return outcome;
    }

    /// <summary>Tells what has to be told of a save that went well, and leaves when that was wanted.</summary>
    private void AfterSaving(Outcome<Saved, NotSaved> outcome, string path, bool leave)
    {
        Action go = leave ? () => _app.RequestStop(this) : () => { };
        if (outcome.Value is { Notes.IsEmpty: false } saved)
            Show(new ChoiceSheet(_look, "Saved", saved.Told(path), [(leave ? "Leave" : "Go on", go)], go));
        else
            go();
    }

    private void Open()
    {
        if (_session.IsSaved)
            AskWhatToOpen();
        else
            Show(
                new ChoiceSheet(
                    _look,
                    "Open a visit",
                    "The visit on screen is not saved.",
                    [
                        ("Save it first", Save),
                        ("Open another; this one is offered at the next start", AskWhatToOpen),
                        ("Go on with this one", () => { }),
                    ]
                )
            );
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
        Show(
            new ChoiceSheet(
                _look,
                "An interview was broken off",
                before is null ? offer.Told : $"{before}\n\n{offer.Told}",
                [
                    ("Go on with it", () => _told = offer.GoOn()),
                    ("Do not go on with it; it is put aside", () => OfferRecovered(at + 1, offer.Decline())),
                    ("Ask again at the next start", () => { }),
                ]
            )
        );
    }
}
