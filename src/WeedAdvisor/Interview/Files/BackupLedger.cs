using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Files;

/// <summary>
/// Remembers from one start to the next which copies this program made, and what it put into them, so that it never
/// replaces a file that only happens to be called like one, nor the copy of a window that is still open. When in doubt
/// a copy is left alone.
/// </summary>
/// <param name="folder">The state folder; null to remember nothing, so that no copy is ever replaced.</param>
public sealed class BackupLedger(string? folder = null) : IDisposable
{
    private const int MostRemembered = 500;

    private readonly string _window = WindowLock.NewId();
    private FileStream? _lock;

    private string? Ledger => folder is null ? null : Path.Combine(folder, "copies.txt");

    /// <summary>
    /// Whether the file is a copy that this program made, still holds what it put there, and may be replaced.
    /// </summary>
    public bool MayReplace(string path, FileStamp stamp) =>
        Lines().FirstOrDefault(line => line.StartsWith($"{stamp} ", StringComparison.Ordinal) && IsOf(line, path))
            is { } line
        && !IsAlive(line.Split(' ')[2]);

    /// <summary>Remembers a copy.</summary>
    public void Note(string path, FileStamp stamp)
    {
        if (Ledger is null || path.Contains('\n'))
            return;
        try
        {
            _lock ??= WindowLock.Hold(LockOf(_window));
            IEnumerable<string> kept = Lines().Where(line => !IsOf(line, path)).TakeLast(MostRemembered - 1);
            AtomicFile.Write(
                Ledger,
                string.Concat(kept.Append($"{stamp} {_window} {path}").Select(line => line + "\n"))
            );
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The next start will take the copy for another's and leave it alone.
        }
    }

    /// <summary>The copies that were made here may be replaced from now on.</summary>
    public void Dispose() => _lock?.Dispose();

    private static bool IsOf(string line, string path) =>
        line.Split(' ', 4) is [_, _, _, string noted] && noted == path;

    private bool IsAlive(string window)
    {
        using FileStream? held = WindowLock.TryHold(LockOf(window));
        return held is null;
    }

    private string LockOf(string window) => Path.Combine(folder!, $"copies-{window}.lock");

    private string[] Lines()
    {
        try
        {
            return Ledger is not null && FileKinds.Of(Ledger) == FileKind.Regular ? File.ReadAllLines(Ledger) : [];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}
