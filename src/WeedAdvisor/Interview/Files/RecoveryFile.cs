using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Files;

/// <summary>
/// Keeps the draft of this window in a file of the state folder, and finds those of windows that are no more.
/// </summary>
/// <param name="folder">The state folder; made when it is missing.</param>
/// <param name="knowledge">The knowledge whose words the drafts use.</param>
/// <param name="fullPath">Makes a path absolute.</param>
/// <param name="stampOf">What a visit file held when it was read.</param>
public sealed class RecoveryFile(
    string folder,
    KnowledgeBase knowledge,
    Func<string, string> fullPath,
    Func<string, FileStamp?> stampOf
) : IDraftKeeper, IDisposable
{
    // Fewer answers are soon said again, and taking out a few of many is an ordinary edit.
    private const int FewestLost = 3;

    private readonly List<DraftSlot> _found = [];
    private DraftSlot _slot = DraftSlot.New(folder);
    private Draft? _fullest;
    private bool _isFullerKept;

    /// <inheritdoc/>
    public string Where => _slot.DraftPath;

    // Before every window had a file of its own there was this one, with the copy before it beside it.
    private string OldPath => Path.Combine(folder, "recovery.yaml");

    /// <summary>
    /// The interviews that were broken off, the newest first. One that cannot be read is put aside. They are held for
    /// this window until it is disposed.
    /// </summary>
    /// <returns>The interviews, and a line for each that could not be read.</returns>
    public (IReadOnlyList<BrokenOff> Found, IReadOnlyList<string> Troubles) Offers()
    {
        var troubles = new List<string>();
        var found = new List<(DateTime When, BrokenOff Offer)>();
        _ = Try(() =>
        {
            if (!Directory.Exists(folder))
                return;
            TakeUpOld(troubles);
            _found.AddRange(DraftSlot.BrokenOff(folder));
            foreach (DraftSlot slot in _found)
            {
                foreach (string path in new[] { slot.DraftPath, slot.FullerPath }.Where(File.Exists))
                {
                    DateTime when = File.GetLastWriteTimeUtc(
                        slot.IsUsed && File.Exists(slot.DraftPath) ? slot.DraftPath : path
                    );
                    if (Draft.Read(path, knowledge) is { } draft)
                        found.Add((when, new BrokenOff(draft, slot, path == slot.FullerPath)));
                    else
                        troubles.Add(Unreadable(path));
                }
            }
        });
        return ([.. found.OrderByDescending(one => one.When).Select(one => one.Offer)], troubles);
    }

    /// <summary>
    /// Takes over an interview that was broken off: this window keeps it from now on. All others are let go.
    /// </summary>
    public void Adopt(BrokenOff offer)
    {
        _slot.Dispose();
        _slot = offer.Slot;
        _found.Remove(offer.Slot);
        _ = Try(() =>
        {
            if (offer.IsFuller && !File.Exists(offer.Slot.DraftPath))
                File.Move(offer.Slot.FullerPath, offer.Slot.DraftPath);
        });
        _isFullerKept = File.Exists(_slot.FullerPath);
        _fullest = _isFullerKept ? Draft.Read(_slot.FullerPath, knowledge) : offer.Draft;
        Release();
    }

    /// <summary>Lets go all that was found: it is offered again at the next start.</summary>
    public void Release()
    {
        foreach (DraftSlot slot in _found)
            slot.Dispose();
        _found.Clear();
    }

    /// <inheritdoc/>
    public string? Keep(Visit draft, string? file) =>
        Try(() =>
        {
            _slot.Hold();
            var kept = new Draft(draft, file is null ? null : fullPath(file), file is null ? null : stampOf(file));
            KeepFuller(kept);
            AtomicFile.Write(_slot.DraftPath, kept.Text());
        });

    /// <inheritdoc/>
    public void Rest(Visit visit) =>
        Try(() =>
        {
            if (_fullest is not null)
                KeepFuller(_fullest with { Visit = visit });
            if (File.Exists(_slot.DraftPath))
                File.Delete(_slot.DraftPath);
        });

    /// <inheritdoc/>
    public void Discard() =>
        Try(() =>
        {
            Forget();
            _slot.Clear();
        });

    /// <inheritdoc/>
    public void LetGo()
    {
        Forget();
        _slot.Dispose();
        _slot = DraftSlot.New(folder);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Release();
        _slot.Dispose();
    }

    private void Forget()
    {
        _fullest = null;
        _isFullerKept = false;
    }

    /// <summary>
    /// Keeps the fullest state of the visit beside the draft once most of it was taken out: by a slip of the hand, the
    /// draft would be emptied with the visit.
    /// </summary>
    private void KeepFuller(Draft now)
    {
        int said = Draft.Said(now.Visit),
            most = _fullest is null ? 0 : Draft.Said(_fullest.Visit);
        if (said >= most)
        {
            _fullest = now;
            if (_isFullerKept)
                File.Delete(_slot.FullerPath);
            _isFullerKept = false;
        }
        else if (!_isFullerKept && said * 2 < most && most - said >= FewestLost)
        {
            _slot.Hold();
            AtomicFile.Write(_slot.FullerPath, _fullest!.Text());
            _isFullerKept = true;
        }
    }

    private void TakeUpOld(List<string> troubles)
    {
        string backup = OldPath + ".bak";
        if (!File.Exists(OldPath))
            return;
        bool isGood = Draft.Read(OldPath, knowledge) is not null;
        if (!isGood && Draft.Read(backup, knowledge) is null)
        {
            troubles.Add(Unreadable(OldPath));
            return;
        }

        using var slot = DraftSlot.New(folder);
        slot.Hold();
        if (isGood)
        {
            File.Move(OldPath, slot.DraftPath);
            File.Delete(backup);
        }
        else
        {
            File.Move(backup, slot.DraftPath);
            BrokenOff.PutAside(OldPath, "unreadable");
        }
    }

    private static string Unreadable(string path) =>
        "An interview that was broken off cannot be read with this knowledge. "
        + BrokenOff.PutAside(path, "unreadable");

    private static string? Try(Action action)
    {
        try
        {
            action();
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return e.Message.ReplaceLineEndings(" ");
        }
    }
}
