using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview;

/// <summary>Visit files on the disk.</summary>
/// <param name="knowledge">The knowledge whose words the visits use.</param>
/// <param name="fullPath">Makes a path absolute.</param>
public sealed class VisitStore(KnowledgeBase knowledge, Func<string, string> fullPath) : IVisitStore
{
    /// <inheritdoc/>
    public (Visit? Visit, IReadOnlyList<string> Problems) Load(string path)
    {
        if (!File.Exists(fullPath(path)))
            return (null, [$"There is no file '{path}'."]);
        Outcome<Visit> outcome = VisitFile.Read(fullPath(path), knowledge);
        return outcome.IsGood
            ? (outcome.Value, [])
            : (null, [.. outcome.Problems.Select(p => (p with { Where = p.Where with { File = path } }).ToString())]);
    }

    /// <inheritdoc/>
    public bool Exists(string path) => File.Exists(fullPath(path));

    /// <inheritdoc/>
    public string? Save(string path, Visit visit)
    {
        try
        {
            AtomicFile.Write(fullPath(path), VisitText.Of(visit));
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return $"'{path}' cannot be written: {e.Message.ReplaceLineEndings(" ")}";
        }
    }
}
