namespace WeedAdvisor.Interview.Files;

/// <summary>
/// The place of one window's draft. It is held by an open lock file, which the system lets go when the process ends,
/// however it ends; so what no living window holds was broken off.
/// </summary>
public sealed class DraftSlot : IDisposable
{
    private const string Prefix = "recovery-",
        Fuller = "-fuller",
        Ending = ".yaml";

    // Tells a slot from files of earlier programs in the same folder.
    private const int IdLength = 11;

    private readonly string _folder;
    private FileStream? _lock;

    private DraftSlot(string folder, string id)
    {
        _folder = folder;
        DraftPath = Path.Combine(folder, Prefix + id + Ending);
        FullerPath = Path.Combine(folder, Prefix + id + Fuller + Ending);
        LockPath = Path.Combine(folder, Prefix + id + ".lock");
    }

    /// <summary>The draft as it last stood.</summary>
    public string DraftPath { get; }

    /// <summary>The draft as it stood before most of it was taken out; as a rule there is no such file.</summary>
    public string FullerPath { get; }

    /// <summary>Whether there is a draft.</summary>
    public bool IsUsed => File.Exists(DraftPath) || File.Exists(FullerPath);

    private string LockPath { get; }

    /// <summary>A slot that no window has; nothing is made on the disk yet.</summary>
    public static DraftSlot New(string folder) => new(folder, WindowLock.NewId());

    /// <summary>The slots of the folder that no living window holds; each is held from now on.</summary>
    public static IReadOnlyList<DraftSlot> BrokenOff(string folder)
    {
        var slots = new List<DraftSlot>();
        foreach (
            string id in Directory
                .EnumerateFiles(folder, Prefix + "*")
                .Select(IdOf)
                .OfType<string>()
                .Distinct()
                .ToArray()
        )
        {
            var slot = new DraftSlot(folder, id);
            slot._lock = WindowLock.TryHold(slot.LockPath);
            if (slot._lock is not null && slot.IsUsed)
                slots.Add(slot);
            else
                slot.Dispose();
        }

        return slots;
    }

    /// <summary>Holds the slot for this window. The folder is made when it is missing.</summary>
    /// <exception cref="IOException">The folder can't be used, or another window holds the slot.</exception>
    /// <exception cref="UnauthorizedAccessException">The same, for want of permission.</exception>
    public void Hold() => _lock ??= WindowLock.Hold(LockPath);

    /// <summary>Deletes the drafts.</summary>
    public void Clear()
    {
        // A folder that was never made holds no draft; File.Delete minds a missing folder, not a missing file.
        if (!Directory.Exists(_folder))
            return;
        File.Delete(DraftPath);
        File.Delete(FullerPath);
    }

    /// <summary>Lets the slot go. A draft in it is offered at the next start.</summary>
    public void Dispose()
    {
        _lock?.Dispose();
        _lock = null;
    }

    private static string? IdOf(string path)
    {
        string name = Path.GetFileNameWithoutExtension(path)[Prefix.Length..];
        string id = name.EndsWith(Fuller, StringComparison.Ordinal) ? name[..^Fuller.Length] : name;
        return id.Length == IdLength && id.All(char.IsAsciiLetterOrDigit) ? id : null;
    }
}
