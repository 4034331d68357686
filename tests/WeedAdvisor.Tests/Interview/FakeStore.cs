using WeedAdvisor.Interview.Files;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Tests.Interview;

/// <summary>A store in memory.</summary>
internal sealed class FakeStore : IVisitStore
{
    public Dictionary<string, Visit> Files { get; } = new(StringComparer.Ordinal);

    public string? Refuses { get; set; }

    public (Visit? Visit, IReadOnlyList<string> Problems) Load(string path) =>
        Files.TryGetValue(path, out Visit? visit) ? (visit, []) : (null, [$"{path}: there is no such file"]);

    public bool Exists(string path) => Files.ContainsKey(path);

    /// <summary>Files that others have changed.</summary>
    public HashSet<string> Changed { get; } = new(StringComparer.Ordinal);

    /// <summary>What saving tells.</summary>
    public string? Note { get; set; }

    public Outcome<Saved, NotSaved> Save(string path, Visit visit, string? basis = null, bool over = false)
    {
        if (Refuses is not null)
            return new NotSaved(Refuses);
        if (Changed.Contains(path) && !over)
            return NotSaved.Changed(path);
        Changed.Remove(path);
        string? copy = Files.ContainsKey(path) ? path + ".bak" : null;
        Files[path] = visit;
        return new Saved(copy, Note is null ? [] : [Note]);
    }

    public FileStamp? StampOf(string path) => null;

    public void Resume(string path, FileStamp? stamp) { }
}

/// <summary>A keeper in memory.</summary>
internal sealed class FakeKeeper : IDraftKeeper
{
    public Visit? Kept { get; private set; }

    public int Times { get; private set; }

    public string? Trouble { get; set; }

    public string Where => "/state/recovery.yaml";

    public string? KeptFile { get; private set; }

    public int TimesLetGo { get; private set; }

    public string? Keep(Visit draft, string? file)
    {
        if (Trouble is not null)
            return Trouble;
        Kept = draft;
        KeptFile = file;
        Times++;
        return null;
    }

    public void Rest(Visit visit) => Kept = null;

    public void Discard() => Kept = null;

    public void LetGo() => TimesLetGo++;
}
