using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview;

/// <summary>Keeps the draft in a file of the state folder.</summary>
/// <param name="folder">The state folder; made when it is missing.</param>
/// <param name="knowledge">The knowledge whose words the draft uses.</param>
public sealed class RecoveryFile(string folder, KnowledgeBase knowledge) : IDraftKeeper
{
    private readonly string _path = Path.Combine(folder, "recovery.yaml");

    /// <inheritdoc/>
    public string Where => _path;

    /// <summary>Where a draft goes that the grower did not want back, and one that could not be read.</summary>
    public string AsidePath => Path.Combine(folder, "recovery-aside.yaml");

    /// <summary>The draft of an interview that was broken off; null when there is none, or none that can be read. A draft that cannot be read is put aside.</summary>
    /// <returns>The draft, and a line to tell when one could not be read.</returns>
    public (Visit? Draft, string? Trouble) Offer()
    {
        if (!File.Exists(_path))
            return (null, null);
        foreach (string file in new[] { _path, Backup(_path) })
        {
            Outcome<Visit> outcome = VisitFile.Read(file, knowledge);
            if (outcome.IsGood)
                return (outcome.Value, null);
        }

        return (null, SetAside() is { } trouble
            ? $"An interview that was broken off cannot be read, nor put aside: {trouble}"
            : $"An interview that was broken off cannot be read with this knowledge; it is put aside in {AsidePath}.");
    }

    /// <summary>Puts the draft aside, so that the next one does not overwrite it.</summary>
    /// <returns>Why it could not be put aside, in one line, or null when it was.</returns>
    public string? SetAside() => Try(() => File.Move(_path, AsidePath, overwrite: true));

    /// <inheritdoc/>
    public string? Keep(Visit draft) => Try(() =>
    {
        MakeFolder();
        AtomicFile.Write(_path, VisitText.Of(draft));
    });

    /// <inheritdoc/>
    public void Discard() => Try(() =>
    {
        // A folder that was never made holds no draft; File.Delete minds a missing folder, not a missing file.
        if (!Directory.Exists(folder))
            return;
        File.Delete(_path);
        File.Delete(Backup(_path));
    });

    private static string Backup(string path) => path + ".bak";

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

    private void MakeFolder()
    {
        if (OperatingSystem.IsWindows())
            Directory.CreateDirectory(folder);
        else
            Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }
}
