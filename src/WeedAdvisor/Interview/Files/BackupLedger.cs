using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Files;

/// <summary>
/// Remembers from one start to the next which copies this program made, and what it put into them, so that it never
/// replaces a file that only happens to be called like one. When in doubt a copy is not its own.
/// </summary>
/// <param name="file">Where that is kept; null to remember nothing beyond this start.</param>
public sealed class BackupLedger(string? file = null)
{
    private const int MostRemembered = 500;

    private readonly List<string> _lines = [];

    /// <summary>Whether the file was made by this program and still holds what it put there.</summary>
    public bool IsOwn(string path, FileStamp stamp) => Lines().Contains(Line(path, stamp));

    /// <summary>Remembers a copy.</summary>
    public void Note(string path, FileStamp stamp)
    {
        if (path.Contains('\n'))
            return;
        string line = Line(path, stamp);
        _lines.Add(line);
        if (file is null)
            return;
        try
        {
            IEnumerable<string> others = Lines().Where(other => !other.EndsWith($" {path}", StringComparison.Ordinal));
            AtomicFile.Write(file, string.Concat(others.TakeLast(MostRemembered - 1).Append(line).Select(one => one + "\n")));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The next start will take the copy for another's and leave it alone.
        }
    }

    private static string Line(string path, FileStamp stamp) => $"{stamp} {path}";

    private List<string> Lines()
    {
        try
        {
            return file is not null && FileKinds.Of(file) == FileKind.Regular ? [.. File.ReadAllLines(file)] : _lines;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return _lines;
        }
    }
}
