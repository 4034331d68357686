using WeedAdvisor.Interview;
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

    public string? Save(string path, Visit visit)
    {
        if (Refuses is not null)
            return Refuses;
        Files[path] = visit;
        return null;
    }
}

/// <summary>A keeper in memory.</summary>
internal sealed class FakeKeeper : IDraftKeeper
{
    public Visit? Kept { get; private set; }

    public int Times { get; private set; }

    public string? Trouble { get; set; }

    public string Where => "/state/recovery.yaml";

    public string? Keep(Visit draft)
    {
        if (Trouble is not null)
            return Trouble;
        Kept = draft;
        Times++;
        return null;
    }

    public void Discard() => Kept = null;
}
